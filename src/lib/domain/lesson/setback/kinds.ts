import type { ProblemKind } from '../types';
import { arc } from './arc';
import { clearPlace } from './clear';
import { pairs } from './pairs';
import { stakes } from './stakes';

export const setbackKinds: ProblemKind[] = [stakes, pairs, arc, clearPlace];
