/** Problems of volts lost in a cable. Currents are taken as they are at the supply's volts: what is done by hand. */
import type { ProblemKind } from '../types';
import { endKind } from './end';
import { lastKind } from './last';
import { lightKind } from './light';
import { sizeKind } from './size';

export const dropKinds: ProblemKind[] = [endKind, lastKind, sizeKind, lightKind];
