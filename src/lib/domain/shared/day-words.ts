/** Days of the year and hours of light in words. */
export const monthNames = [
	'January',
	'February',
	'March',
	'April',
	'May',
	'June',
	'July',
	'August',
	'September',
	'October',
	'November',
	'December'
] as const;

/** `5 May` out of anything that ends in a month and a day: `05-05`, `2027-05-05`. */
export const dayInWords = (date: string): string =>
	`${Number(date.slice(-2))} ${monthNames[Number(date.slice(-5, -3)) - 1] ?? ''}`;

/** As the yard has them. */
type Hours =
	| { kind: 'dusk-to-dawn' }
	| { kind: 'after-dusk'; hours: number }
	| { kind: 'until'; clock: string }
	| { kind: 'split'; evening: string; morning: string };

/** `from dusk to dawn`, `5 hours from dusk`, `from dusk until 23:00`. */
export function hoursInWords(hours: Hours): string {
	switch (hours.kind) {
		case 'dusk-to-dawn':
			return 'from dusk to dawn';
		case 'after-dusk':
			return `${hours.hours} ${hours.hours === 1 ? 'hour' : 'hours'} from dusk`;
		case 'until':
			return `from dusk until ${hours.clock}`;
		case 'split':
			return `from dusk until ${hours.evening}, and from ${hours.morning} until dawn`;
	}
}
