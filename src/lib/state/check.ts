import * as z from 'zod/mini';
import { yardSchema, type Yard } from '../domain/yard';

/** Whether a changed yard is still one: what a page hands over is checked before it is taken. */
export const isYard = (yard: Yard): boolean => z.safeParse(yardSchema, yard).success;
