/** Problems of resistances one after another and side by side. Filament lamps are taken as the resistance they have at their rated volts. */
import type { ProblemKind } from '../types';
import { besideAmpsKind } from './beside-amps';
import { ohmKind } from './ohm';
import { shareKind } from './share';
import { totalKind } from './total';

export const seriesKinds: ProblemKind[] = [ohmKind, besideAmpsKind, shareKind, totalKind];
