import { session } from '$lib/state';

/** Forgets what was typed and not taken of a thing: it is gone, or its points have other numbers. */
export function forgetDrafts(key: string): void {
	const stem = `board/${key}/`;
	for (const draft of Object.keys(session.drafts)) {
		const [path = ''] = draft.split('|');
		if (path.startsWith(stem)) session.setDraft(path, null, null);
	}
}
