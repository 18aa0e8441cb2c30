/** The fixture schedule: neighbours that light the same thing the same way share their reasons, so that each is said once. */
import type { Plan } from '../domain/plan';
import type { Fixture } from '../domain/placement';

export interface ScheduleRow {
	fixture: Fixture;
	/** Reasons that are this fixture's alone. */
	own: string[];
}
export interface ScheduleGroup {
	key: string;
	rows: ScheduleRow[];
	/** Reasons all of the group have. */
	shared: string[];
}
export interface Schedule {
	groups: ScheduleGroup[];
	/** Reasons all fixtures of the plan have. */
	everywhere: string[];
}

const becauses = (fixture: Fixture): string[] => [...new Set(fixture.reasons.map((reason) => reason.because))];
/** What every list holds, in the order of the first; nothing for no lists or a single one. */
function common(lists: readonly string[][]): string[] {
	const [first, ...rest] = lists;
	return first && rest.length > 0 ? first.filter((text) => rest.every((list) => list.includes(text))) : [];
}

/** Every reason of every fixture, each once at its widest place. Order of the plan kept. */
export function scheduleOf(plan: Plan): Schedule {
	const everywhere = common(plan.fixtures.map(becauses));
	const groups: Fixture[][] = [];
	for (const fixture of plan.fixtures) {
		const last = groups.at(-1)?.[0];
		const alike =
			last?.target.kind === fixture.target.kind &&
			last.target.id === fixture.target.id &&
			last.technique === fixture.technique;
		if (alike) groups.at(-1)!.push(fixture);
		else groups.push([fixture]);
	}
	return {
		everywhere,
		groups: groups.map((fixtures) => {
			const shared = common(fixtures.map(becauses)).filter((text) => !everywhere.includes(text));
			return {
				key: fixtures[0]!.id,
				shared,
				rows: fixtures.map((fixture) => ({
					fixture,
					own: becauses(fixture).filter((text) => !everywhere.includes(text) && !shared.includes(text))
				}))
			};
		})
	};
}
