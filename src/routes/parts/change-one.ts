/** How a page of the plan names the figure that it shows, for the page on which one thing is changed. */
import { fixed } from '$lib/domain/shared/show-working';
import type { Working } from '$lib/domain/shared/working';

/** `#label=Volts+at+T1&text=11.64+V&at=oak%2Fuplight-1` */
export function changeOneHash({ label, value, decimals, unit }: Working, at: string | undefined): string {
	const text = fixed(value, decimals);
	return `#${new URLSearchParams({ label, text: unit ? `${text} ${unit}` : text, ...(at ? { at } : {}) })}`;
}
