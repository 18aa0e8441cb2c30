/** Typed text made plain: one kind of mark, fraction, minus and space. */

const vulgar: Record<string, string> = {
	'½': '1/2',
	'⅓': '1/3',
	'⅔': '2/3',
	'¼': '1/4',
	'¾': '3/4',
	'⅛': '1/8',
	'⅜': '3/8',
	'⅝': '5/8',
	'⅞': '7/8',
	'⅕': '1/5',
	'⅖': '2/5',
	'⅗': '3/5',
	'⅘': '4/5',
	'⅙': '1/6',
	'⅚': '5/6'
};

/** Lower case; straight marks for curly ones and primes, `1/2` for ½, `-` for every dash, single plain spaces. */
export const tidy = (text: string): string =>
	text
		.replace(
			/(\d?)([½⅓⅔¼¾⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚])/g,
			(_, digit: string, sign: string) => `${digit ? `${digit} ` : ''}${vulgar[sign]}`
		)
		.replace(/[’‘′´`ʹʼ＇]/g, "'")
		.replace(/[”“″ʺ〃＂]/g, '"')
		.replace(/''/g, '"')
		.replace(/[−–—‐‑‒﹣－]/g, '-')
		.replace(/⁄/g, '/')
		// m² is no length: keep it from becoming m2
		.replace(/[²³]/g, ' squared')
		.normalize('NFKC')
		.toLowerCase()
		.replace(/\s+/g, ' ')
		.trim();
