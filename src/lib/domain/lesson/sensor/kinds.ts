/** Problems of the dusk sensor. */
import type { ProblemKind } from '../types';
import { earlyKind } from './early';
import { hoursKind } from './hours';
import { spotKind } from './spot';

export const sensorKinds: ProblemKind[] = [hoursKind, earlyKind, spotKind];
