/** Minutes after a local midnight as a clock shows them; past 24 hours is the next morning. */
export function clockWords(minutes: number | null): string {
	if (minutes === null) return 'none';
	const whole = Math.round(minutes);
	const day = ((whole % 1440) + 1440) % 1440;
	return `${String(Math.floor(day / 60)).padStart(2, '0')}:${String(day % 60).padStart(2, '0')}`;
}
