/** Hands a calendar file to the browser's downloads. */
export function saveText(name: string, text: string): void {
	const url = URL.createObjectURL(new Blob([text], { type: 'text/calendar;charset=utf-8' }));
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	document.body.append(link);
	link.click();
	link.remove();
	// Safari reads the address after the click has returned
	setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
