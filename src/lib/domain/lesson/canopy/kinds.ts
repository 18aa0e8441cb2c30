import type { ProblemKind } from '../types';
import { beam } from './beam';
import { count } from './count';
import { lean } from './lean';
import { stand } from './stand';

export const canopyKinds: ProblemKind[] = [stand, lean, beam, count];
