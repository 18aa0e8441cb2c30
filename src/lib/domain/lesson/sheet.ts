/**
 * Worksheets from a class code: the same request is the same sheet for ever, and its key is written from the same problems. What a code draws depends on
 * `generatorVersion`, the code, the kind, the units and the variant. A kind added to a lesson takes its turn among that lesson's kinds; the numbers of all others
 * stay as they were.
 */
import { kinds, lessons } from './all';
import { generatorVersion, randomOf } from './random';
import { blanksOf, linesOf } from './sheet/blanks';
import { codeOf } from './sheet/code';
import { drawsOf, type Draws } from './sheet/draws';
import { markOf } from './sheet/mark';
import { countOf, leftOut, otherLevels, tooFew, unknownLessons } from './sheet/said';
import { fitting, levelOf, spread, type Place } from './sheet/spread';
import type { Sheet, SheetProblem, SheetRequest, Stock, Variant } from './sheet/types';
import { lessonIds, type LessonId, type ProblemKind } from './types';

type Asked = Omit<SheetRequest, 'variant'>;
interface Shelf {
	lesson: LessonId;
	title: string;
	kinds: readonly ProblemKind[];
}
/** The kinds that serve a request, by lesson; a lesson without any has an empty shelf. */
const shelvesOf = (lessons: readonly LessonId[], { level }: Asked, stock: Stock): Shelf[] =>
	lessons.map((lesson) => ({
		lesson,
		title: stock.lessons.find(({ id }) => id === lesson)?.title ?? lesson,
		kinds: fitting(
			stock.kinds.filter((kind) => kind.lesson === lesson),
			level
		)
	}));
function drawer(code: string, units: Asked['units']): (kind: ProblemKind) => Draws {
	const known = new Map<ProblemKind, Draws>();
	return (kind) => {
		const draws = known.get(kind) ?? drawsOf(kind, code, units);
		known.set(kind, draws);
		return draws;
	};
}
function saidOf(shelves: readonly Shelf[], places: readonly Place[], { level, count }: Asked): string[] {
	const used = shelves.filter(({ lesson }) => places.some((place) => place.lesson === lesson));
	const unused = shelves.filter((shelf) => shelf.kinds.length > 0 && !used.includes(shelf));
	return [
		...unknownLessons(shelves.filter(({ kinds }) => kinds.length === 0).map(({ title }) => title)),
		...otherLevels(
			used.map(({ title, kinds }) => ({ title, level: levelOf(kinds[0]!, level) })),
			level
		),
		...tooFew(places.length, count),
		...leftOut(
			unused.map(({ title }) => title),
			count
		)
	];
}
/** The sheets of several variants of one code, in the order of `which`. Quicker than one by one; each is what `makeSheet` gives. */
export function makeSheets(asked: Asked, which: readonly Variant[], stock: Stock = { kinds, lessons }): Sheet[] {
	const { code, said: ofCode } = codeOf(asked.code);
	const { count, said: ofCount } = countOf(asked.count);
	const picked = lessonIds.filter((id) => asked.lessons.includes(id));
	const request = { ...asked, code, count, lessons: picked.length > 0 ? picked : [...lessonIds] };
	const shelves = shelvesOf(request.lessons, request, stock);
	const from = drawer(code, asked.units);
	const places = spread(shelves, count, code, (kind, nth) => from(kind).of('A', nth) !== null);
	const said = [
		...ofCode,
		...(picked.length > 0 ? [] : ['No lesson was picked, so problems come from all of them.']),
		...ofCount,
		...saidOf(shelves, places, request)
	];
	return which.map((variant) => ({
		...request,
		variant,
		mark: markOf({ ...request, variant }),
		version: generatorVersion,
		problems: places.map((place, n) => problemAt(place, n + 1, { ...request, variant }, from(place.kind))),
		said
	}));
}
/** One sheet. Total: any text is a code, any count is brought within 1 to 60, and what could not be had is in `said`. */
export const makeSheet = ({ variant, ...asked }: SheetRequest, stock?: Stock): Sheet =>
	makeSheets(asked, [variant], stock)[0]!;

function problemAt({ lesson, kind, nth }: Place, number: number, asked: SheetRequest, draws: Draws): SheetProblem {
	const { code, variant, units } = asked;
	const problem = draws.of(variant, nth)!;
	const level = levelOf(kind, asked.level);
	const random = randomOf(`${generatorVersion}|${code}|${variant}|${kind.id}|${nth}|${units}|${level}`);
	const blanks = blanksOf(problem, level, random);
	const isAll = level === 'all';
	const isLastShown = problem.answer.type === 'number' && !blanks.includes(problem.steps.length - 1);
	return {
		number,
		lesson,
		title: kind.title,
		level,
		problem,
		blanks,
		lines: isAll ? [] : linesOf(problem, blanks),
		open: level !== 'solved' && !isLastShown
	};
}
