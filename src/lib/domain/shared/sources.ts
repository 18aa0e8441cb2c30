/** Where a figure comes from and how well it is known. Paid standards were seen second-hand: the text says so. */

export type Known = 'common practice' | 'standard' | 'memory' | 'physics';
export interface Source {
	id: string;
	known: Known;
	/** As printed beside a figure. */
	text: string;
}
const standard = (id: string, title: string): Source => ({
	id,
	known: 'standard',
	text: `${title} (seen second-hand; check the edition in force where you live)`
});
export const sources = {
	practice: { id: 'practice', known: 'common practice', text: 'common practice, no source' },
	memory: { id: 'memory', known: 'memory', text: 'from memory, check' },
	physics: { id: 'physics', known: 'physics', text: 'follows from physics' },
	geometry: { id: 'geometry', known: 'physics', text: 'follows from geometry' },
	asked: { id: 'asked', known: 'common practice', text: 'your own answer' },
	catalogue: {
		id: 'catalogue',
		known: 'memory',
		text: 'our invented catalogue of typical goods; the marking on yours comes first'
	},
	bs5837: standard('bs5837', 'BS 5837:2012, root protection area'),
	necTable8: standard('necTable8', 'NEC Chapter 9 Table 8, uncoated copper, stranded, 75 °C'),
	iec60228: standard('iec60228', 'IEC 60228, maximum resistance at 20 °C'),
	iec60364G: standard('iec60364G', 'IEC 60364-5-52:2009, Annex G'),
	nec300_5: standard('nec300_5', 'NEC Table 300.5, cover requirements'),
	nec411: standard('nec411', 'NEC Article 411 with UL 1838'),
	nec680: standard('nec680', 'NEC Articles 411 and 680'),
	nec210_8: standard('nec210_8', 'NEC 210.8 and 406.9(B)(1)'),
	nec210_19: standard('nec210_19', 'NEC Article 100 and 210.19'),
	nec240_4: standard('nec240_4', 'NEC 240.4(D)'),
	finkBeaty: standard('finkBeaty', 'Fink & Beaty, Standard Handbook for Electrical Engineers, 11th ed., p. 22-8'),
	en12193: standard('en12193', 'EN 12193 table of obtrusive light'),
	fivePrinciples: standard('fivePrinciples', 'the five principles for responsible outdoor lighting'),
	iesLevels: standard('iesLevels', 'municipal tables using IES-type figures'),
	c136_10: standard('c136_10', 'ANSI C136.10'),
	amsTwilight: standard('amsTwilight', 'AMS Glossary of Meteorology, twilight'),
	dig: { id: 'dig', known: 'standard', text: 'the dig-notice law of your state or country (811 in the US)' },
	silica: { id: 'silica', known: 'memory', text: 'from memory, check: silica dust rules where you live' }
} satisfies Record<string, Source>;
export type SourceId = keyof typeof sources;
