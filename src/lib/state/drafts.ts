/** Text that is typed but not an answer yet, by field and item. */
import type { Drafts } from './storage';

/** Key of a draft: which field, for which item. */
export const draftKey = (path: string, item: string | null = null): string => `${path}|${item ?? ''}`;

/** The drafts with one changed, or forgotten when null; the same drafts when that changes nothing. */
export function withDraft(drafts: Drafts, key: string, text: string | null): Drafts {
	if (text === null) {
		if (!(key in drafts)) return drafts;
		const { [key]: _, ...others } = drafts;
		return others;
	}
	return drafts[key] === text ? drafts : { ...drafts, [key]: text };
}
