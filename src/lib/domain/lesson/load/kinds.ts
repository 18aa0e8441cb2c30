/** Problems of watts, volt-amperes, amperes and of what a transformer may carry. */
import type { ProblemKind } from '../types';
import { ampsKind } from './amps';
import { roomKind } from './room';
import { smallestKind } from './smallest';
import { vaKind } from './va';

export const loadKinds: ProblemKind[] = [vaKind, roomKind, smallestKind, ampsKind];
