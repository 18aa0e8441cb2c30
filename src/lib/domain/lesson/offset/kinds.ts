import type { ProblemKind } from '../types';
import { behind } from './behind';
import { diagonal } from './diagonal';
import { paper } from './scale';
import { square } from './square';

export const offsetKinds: ProblemKind[] = [diagonal, square, paper, behind];
