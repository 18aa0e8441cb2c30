/** The way through: answers are replayed into the list of pages that apply, so no position is ever remembered. */
import type { Yard } from '../domain/yard';
import { fullPath, readAnswer, type Each } from './answers';
import { chapters, questions } from './questions';
import { stepStatus } from './status';
import type { Chapter, ChapterId, Field, Question, Step } from './types';

interface Item {
	id: string;
	name?: string;
}
/** The items a question is asked for: those of its list, or `null` once. */
function itemsOf(yard: Yard, each: Each): (string | null)[] {
	if (!each) return [null];
	const list = readAnswer(yard, each);
	return Array.isArray(list) ? list.map((item: Item) => item.id) : [];
}
/** Questions that follow each other and are asked for the same list stay together, item by item. */
const blocks: readonly (readonly Question[])[] = questions.reduce<Question[][]>((done, question) => {
	const last = done.at(-1);
	if (question.each && last?.[0]?.each === question.each) last.push(question);
	else done.push([question]);
	return done;
}, []);

/** Worked out once for a yard: a yard is a value, and many parts of a page ask of the same one. */
function onceFor<Result>(work: (yard: Yard) => Result): (yard: Yard) => Result {
	const kept = new WeakMap<Yard, Result>();
	return (yard) => {
		if (!kept.has(yard)) kept.set(yard, work(yard));
		return kept.get(yard)!;
	};
}

export interface Place {
	question: Question;
	item: string | null;
}
/** Every page there could be for the items at hand, whether it applies now or not. */
export const allPlaces = onceFor((yard): readonly Place[] =>
	blocks.flatMap((block) =>
		itemsOf(yard, block[0]?.each).flatMap((item) => block.map((question) => ({ question, item })))
	)
);

export const applies = (yard: Yard, { question, item }: Place): boolean => question.when?.(yard, item) ?? true;

const toStep = (yard: Yard, { question, item }: Place): Step => ({
	question,
	item,
	status: stepStatus(yard, question, item)
});

/** Every page that applies, in order, with how far it is answered. */
export const stepsOf = onceFor((yard): readonly Step[] =>
	allPlaces(yard)
		.filter((place) => applies(yard, place))
		.map((place) => toStep(yard, place))
);

/** Address of a page, relative to the site's base: `ask/trees/canopy?item=oak`. */
export const stepPath = ({ question, item }: Place): string =>
	`ask/${question.chapter}/${question.id}${item === null ? '' : `?item=${encodeURIComponent(item)}`}`;

/**
 * The page at an address, or null when it does not apply. Without an item, a question asked for each item of a list is
 * taken at its first open one, else at its first.
 */
export function findStep(yard: Yard, chapter: string, questionId: string, item: string | null = null): Step | null {
	const found = stepsOf(yard).filter(({ question }) => question.chapter === chapter && question.id === questionId);
	if (item !== null) return found.find((step) => step.item === item) ?? null;
	return found.find((step) => step.status === 'open') ?? found[0] ?? null;
}

/** Name of the item a page is about, as it stands after "the" in a sentence. */
export function itemName(yard: Yard, { question, item }: Place): string {
	if (item === null || !question.each) return '';
	const found = readAnswer(yard, `${question.each}.${item}`) as Item | undefined;
	return found?.name?.trim().replace(/^(?:the|my|our)\s+/i, '') || item.replaceAll('-', ' ');
}
/** The heading of a page. */
export const stepTitle = (yard: Yard, place: Place): string => place.question.title(itemName(yard, place));

const samePlace = (a: Place, b: Place) => a.question.id === b.question.id && a.item === b.item;

function neighbour(yard: Yard, from: Place, direction: 1 | -1): Step | null {
	const places = allPlaces(yard);
	let index = places.findIndex((place) => samePlace(place, from));
	// its item has gone: stand where the questions about that list begin
	if (index < 0) {
		const order = questions.indexOf(from.question);
		index = places.findIndex((place) => questions.indexOf(place.question) >= order) - (direction > 0 ? 1 : 0);
	}
	for (let i = index + direction; i >= 0 && i < places.length; i += direction) {
		const place = places[i];
		if (place && applies(yard, place)) return toStep(yard, place);
	}
	return null;
}
/** The page after this one, or null after the last. */
export const nextStep = (yard: Yard, step: Place): Step | null => neighbour(yard, step, 1);
/** The page before this one, or null before the first. */
export const previousStep = (yard: Yard, step: Place): Step | null => neighbour(yard, step, -1);
/** The first page with something left to answer, or null when all is answered. */
export const firstOpenStep = (yard: Yard): Step | null => stepsOf(yard).find((step) => step.status === 'open') ?? null;

export interface Progress {
	chapter: Chapter;
	total: number;
	answered: number;
	open: number;
	/** Where the chapter begins. */
	first: Step | null;
	/** Where to go on in it. */
	firstOpen: Step | null;
}
/** How far each chapter is, counting the pages that apply now. "Not sure" counts as answered. */
export function chapterProgress(yard: Yard): Progress[] {
	const steps = stepsOf(yard);
	return chapters.map((chapter) => {
		const own = steps.filter((step) => step.question.chapter === chapter.id);
		const open = own.filter((step) => step.status === 'open');
		return {
			chapter,
			total: own.length,
			answered: own.length - open.length,
			open: open.length,
			first: own[0] ?? null,
			firstOpen: open[0] ?? null
		};
	});
}

/**
 * The most pages still to come in this chapter after this one, for the items at hand: those that apply, and those
 * that an answer on this page or a later one may bring.
 */
export function remaining(yard: Yard, step: Place): number {
	const inChapter = allPlaces(yard).filter(({ question }) => question.chapter === step.question.chapter);
	const here = inChapter.findIndex((place) => samePlace(place, step));
	if (here < 0) return 0;
	const ahead = inChapter.slice(here);
	const mayCome = (place: Place) =>
		ahead.some(
			({ question, item }) => question.id === place.question.decidedBy && (item === null || item === place.item)
		);
	return ahead.slice(1).filter((place) => applies(yard, place) || mayCome(place)).length;
}

interface Asked extends Place {
	field: Field;
	path: string;
}
/** Every field there could be for the items at hand, with its full path. */
const everythingAsked = onceFor((yard): Asked[] =>
	allPlaces(yard).flatMap((place) =>
		place.question.fields.map((field) => ({
			...place,
			field,
			path: fullPath(field.path, place.item, place.question.each)
		}))
	)
);

/**
 * The page on which the answer at a path (of a finding, an assumption, something missing) is given. An answer that does
 * not apply now leads to the page that decides whether it does; an item's own path leads to its first page.
 */
export function stepForPath(yard: Yard, path: string): Step | null {
	const places = allPlaces(yard);
	const ofItem = places.find(({ question, item }) => item !== null && path === `${question.each}.${item}`);
	if (ofItem) return toStep(yard, ofItem);
	const inside = everythingAsked(yard).filter((asked) => path === asked.path || path.startsWith(`${asked.path}.`));
	const longest = Math.max(...inside.map((asked) => asked.path.length));
	const nearest = inside.filter((asked) => asked.path.length === longest);
	const found =
		nearest.find((asked) => applies(yard, asked) && (asked.field.when?.(yard, asked.item) ?? true)) ?? nearest[0];
	if (!found) return null;
	const isAsked = applies(yard, found) && (found.field.when?.(yard, found.item) ?? true);
	const decider = places.find(
		({ question, item }) => question.id === found.question.decidedBy && (item === null || item === found.item)
	);
	return toStep(yard, !isAsked && decider ? decider : found);
}

/** Pages of a chapter that apply, in order. */
export const stepsOfChapter = (yard: Yard, chapter: ChapterId): Step[] =>
	stepsOf(yard).filter((step) => step.question.chapter === chapter);
