/** Jobs of a yard, and who may do each: read from the plan's own checklist, so that the class hears what the packet prints. */
import { defer, type ChecklistStep } from '../../checklist';
import type { RolesPicture } from '../pictures';
import { stepOf, type YardState } from './checklists';

export type Who = RolesPicture['rows'][number]['who'];
export interface Job {
	id: string;
	/** At most 36 characters: a line of the picture. */
	work: string;
	state: YardState;
	/** The step of the checklist that it belongs to. */
	step: string;
	/** The words of the step that say so, where not the step as a whole does; a match that forbids makes it nobody's. */
	said?: RegExp;
}
const job = (id: string, work: string, state: YardState, step: string, said?: RegExp): Job => ({
	id,
	work,
	state,
	step,
	...(said ? { said } : {})
});
export const jobs: readonly Job[] = [
	job('receptacle', 'Fit an outdoor receptacle', 'bare', 'receptacle'),
	job('connect', 'Join a light to the unplugged cable', 'ready', 'connect/run-1'),
	job('gas', 'Mark where the gas main lies', 'ready', 'dig-notice', /every utility has answered/),
	job('open', 'Open the transformer’s case', 'ready', 'transformer', /Never open or cut a transformer/),
	job('trench', 'Dig a cable trench in marked ground', 'ready', 'trench/run-1'),
	job('gfci', 'Put the receptacle behind a GFCI', 'unguarded', 'gfci'),
	job('extension', 'Feed the lights by extension cord', 'ready', 'transformer', /no extension cord/),
	job('private', 'Mark your own irrigation pipe', 'ready', 'dig-notice', /mark those yourself/),
	job('cover', 'Fit an in-use cover on a receptacle', 'unguarded', 'cover'),
	job('live', 'Join a light with the power on', 'ready', 'unplug', /Never work on a connection with power on/),
	job('call', 'Call the dig-notice service', 'ready', 'dig-notice'),
	job('mains', 'Mark the power company’s cable', 'ready', 'dig-notice', /every utility has answered/),
	job('dead', 'Mend a GFCI that no longer trips', 'ready', 'monthly-gfci'),
	job('hang', 'Hang the transformer, unplugged', 'ready', 'transformer', /Leave it unplugged/),
	job('twist', 'Twist bare wires and tape them', 'ready', 'connect/run-1', /never twist and tape/),
	job('terminals', 'Put cable on the unplugged terminals', 'ready', 'terminals'),
	job('rain', 'Join the cables in the rain', 'ready', 'weather', /no electrical work in rain/),
	job('water', 'Mark the water company’s pipe', 'ready', 'dig-notice', /every utility has answered/),
	job('hammer', 'Hammer a light into hard ground', 'ready', 'set-stakes', /never hammer on the fixture/),
	job('aim', 'Aim the lamps after dark', 'ready', 'aim')
];
export const jobOf = (id: string): Job => jobs.find((one) => one.id === id)!;

const saidIn = ({ text, cautions }: ChecklistStep): string[] =>
	[text, ...cautions].flatMap((words) => words.split(/(?<=[.])\s+/));
/** The sentence of the checklist that a job goes by; of a whole step its first caution, else its first sentence. */
export function sentenceOf({ state, step, said }: Job): string {
	const of = stepOf(state, step);
	if (!said) return saidIn(of)[of.cautions.length > 0 ? of.text.split(/(?<=[.])\s+/).length : 0]!;
	const found = saidIn(of).find((words) => said.test(words));
	if (found === undefined) throw new Error(`The step ${step} does not say ${said.source}`);
	return found;
}
/** Who may do it, as the checklist has it. */
export function whoOf(job: Job): Who {
	const words = job.said ? sentenceOf(job) : '';
	if (/\b(never|no) /i.test(words)) return 'nobody';
	if (/utility has answered/.test(words)) return 'utility';
	return !job.said && stepOf(job.state, job.step).defers.includes(defer.electrician) ? 'electrician' : 'you';
}
export const whoWords: Record<Who, string> = {
	you: 'you, with care',
	electrician: 'a licensed electrician',
	utility: 'the utility’s own people',
	nobody: 'nobody: it is not done'
};
/** Why, one sentence of at most 130 characters. */
export const whyWords: Record<Who, string> = {
	you: 'The low-voltage side is yours: with the transformer unplugged, the ground marked and the maker’s instructions read.',
	electrician: defer.electrician,
	utility: 'Only the utilities know where their lines lie; they mark them once you have called.',
	nobody: 'No plan asks for it, and nobody does it, whatever they are licensed for.'
};
/** Said whatever the job is. */
export const always = `${defer.code} ${defer.maker}`;
