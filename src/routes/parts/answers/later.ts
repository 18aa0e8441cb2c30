/** The kinds of answer that the first question does not need: loaded after it stands, in one piece. */
import { readLength } from '$lib/domain/shared/read-length';
import { readCount, readDegrees, readNumber } from '$lib/domain/shared/read-number';
import type { Readers } from '../reading';

export const readers: Readers = { readLength, readCount, readDegrees, readNumber };

export { default as BearingAnswer } from './BearingAnswer.svelte';
export { default as HoursAnswer } from './HoursAnswer.svelte';
export { default as ItemsAnswer } from './ItemsAnswer.svelte';
export { default as LineAnswer } from './LineAnswer.svelte';
export { default as PlaceAnswer } from './PlaceAnswer.svelte';
export { default as PointAnswer } from './PointAnswer.svelte';
export { default as PriceAnswer } from './PriceAnswer.svelte';
export { default as RowsAnswer } from './RowsAnswer.svelte';
export { default as SpotAnswer } from './SpotAnswer.svelte';
export { glossary } from '$lib/flow';
