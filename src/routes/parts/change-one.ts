/** How a page of the plan names the figure that it shows, for the page on which one thing is changed. */

/** `#label=Volts+at+T1&text=11.64+V&at=oak%2Fuplight-1` */
export const changeOneHash = (label: string, text: string, at: string | undefined): string =>
	`#${new URLSearchParams({ label, text, ...(at ? { at } : {}) })}`;
