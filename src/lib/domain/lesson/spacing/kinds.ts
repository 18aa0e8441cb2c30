/** Problems of path lights in a row. */
import type { ProblemKind } from '../types';
import { countKind, evenKind } from './count';
import { evennessKind, rulesKind } from './readings';

export const spacingKinds: ProblemKind[] = [countKind, evenKind, evennessKind, rulesKind];
