/** Problems of beams and of light by distance. */
import type { ProblemKind } from '../types';
import { asideKind } from './aside';
import { footcandlesKind } from './footcandles';
import { furtherKind } from './further';
import { widthKind } from './width';

export const beamKinds: ProblemKind[] = [widthKind, furtherKind, asideKind, footcandlesKind];
