/** What reads typed fields, for pages that have some from the start; a question fetches them with its kinds of answer. */
import { readLength } from '$lib/domain/shared/read-length';
import { readCount, readDegrees, readNumber } from '$lib/domain/shared/read-number';
import { giveReaders, type Readers } from './reading';

export const readers: Readers = { readLength, readCount, readDegrees, readNumber };
/** From here on typed fields are read. */
export const readTyped = (): void => giveReaders(readers);
