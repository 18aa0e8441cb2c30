/** Parts of a load that are alike and follow one another, told together: `8 × LED 12 W, 15 VA each`. */
import type { LoadPicture } from '$lib/domain/lesson';

export function groupsOf(parts: LoadPicture['parts']): string[] {
	const groups: { label: string; text: string; count: number }[] = [];
	for (const { label, text } of parts) {
		const last = groups.at(-1);
		if (last?.label === label && last.text === text) last.count += 1;
		else groups.push({ label, text, count: 1 });
	}
	return groups.map(({ label, text, count }) =>
		count === 1 ? `${label}, ${text}` : `${count} × ${label}, ${text} each`
	);
}
