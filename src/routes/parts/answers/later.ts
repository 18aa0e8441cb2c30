/** The kinds of answer that the first question does not need: loaded after it stands, in one piece. */
import { readLength } from '$lib/domain/shared/read-length';
import { readCount, readDegrees, readNumber } from '$lib/domain/shared/read-number';
import type { Readers } from '../reading';

export const readers: Readers = { readLength, readCount, readDegrees, readNumber };

export { default as LaterAnswer } from './LaterAnswer.svelte';
export { glossary } from '$lib/flow';
