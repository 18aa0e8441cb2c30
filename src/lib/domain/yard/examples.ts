import * as z from 'zod/mini';
import columns from './awkward/columns.json';
import crossways from './awkward/crossways.json';
import elbow from './awkward/elbow.json';
import gable from './awkward/gable.json';
import gate from './awkward/gate.json';
import palms from './awkward/palms.json';
import pond from './awkward/pond.json';
import sliver from './awkward/sliver.json';
import turnback from './awkward/turnback.json';
import verge from './awkward/verge.json';
import overloaded from './faults/overloaded.json';
import overvolted from './faults/overvolted.json';
import rural from './examples/rural.json';
import starved from './faults/starved.json';
import storeys from './awkward/storeys.json';
import suburban from './examples/suburban.json';
import town from './examples/town.json';
import { yardSchema, type Yard } from './schema';

/** A yard to start from. */
export interface Start {
	id: string;
	title: string;
	about: string;
	yard: Yard;
}
const start = (id: string, title: string, about: string, yard: unknown): Start => ({
	id,
	title,
	about,
	// JSON as imported is typed loosely; checking it once gives it its type.
	get yard() {
		return z.parse(yardSchema, yard);
	}
});

// Marked pure so that a page which only needs the schema does not carry the demos with it.
/** Three finished yards, invented, ready to dig. Each reading of `yard` is a fresh copy. */
export const examples: readonly Start[] = [
	/* @__PURE__ */ start(
		'town',
		'Quince Row',
		'A narrow town front: a straight walk with a railing, and one small tree.',
		town
	),
	/* @__PURE__ */ start(
		'suburban',
		'Alder Bend',
		'An L-shaped house with a porch, a walk that bends twice and climbs two flights of steps, five trees, a seating circle and a pond.',
		suburban
	),
	/* @__PURE__ */ start(
		'rural',
		'Hazelmoor',
		'Sixty metres of curving drive between posts, an avenue of six trees, a long stone wall, and a walk round to a side door.',
		rural
	)
];

/** Three invented yards wired as people wire them, each with one thing wrong in the circuit that is there to be found. */
export const faulty: readonly Start[] = [
	/* @__PURE__ */ start(
		'starved',
		'Fennick Gate',
		'A long walk lit from one thin cable on the lowest tap. By the gate it is dim.',
		starved
	),
	/* @__PURE__ */ start(
		'overvolted',
		'Oddle Court',
		'Halogen lamps on a tap that was turned up for the far ones. Those by the house keep burning out.',
		overvolted
	),
	/* @__PURE__ */ start(
		'overloaded',
		'Wistlow Bank',
		'Every halogen lamp of the front on one cable. The transformer is large enough, and still it cuts out.',
		overloaded
	)
];

/** Eleven invented yards that are hard to light. */
export const awkward: readonly Start[] = [
	/* @__PURE__ */ start('elbow', 'Larkspur Corner', 'An L-shaped house, its lit wall half under a porch roof.', elbow),
	/* @__PURE__ */ start(
		'turnback',
		'Kettle Rise',
		'A walk that doubles back up a slope, two flights of steps.',
		turnback
	),
	/* @__PURE__ */ start('gate', 'Ferrow Gate', 'A drive that winds up from a gate.', gate),
	/* @__PURE__ */ start('verge', 'Sparrow Verge', 'A pear by the drive, a magnolia between walk and house.', verge),
	/* @__PURE__ */ start('pond', 'Heron Yard', 'Seating between a pond and the house.', pond),
	/* @__PURE__ */ start('sliver', 'Tanner Side', 'A drive with a wall a step beside it.', sliver),
	/* @__PURE__ */ start('crossways', 'Saddler Steps', 'Two walks that meet below the steps.', crossways),
	/* @__PURE__ */ start('columns', 'Cypress Door', 'A pair of columns by the door.', columns),
	/* @__PURE__ */ start('palms', 'Marram Court', 'A palm, a weeping tree and a fountain, in lawn.', palms),
	/* @__PURE__ */ start('gable', 'Beacon Gable', 'Two storeys, a gable and a garage.', gable),
	/* @__PURE__ */ start('storeys', 'Rookery Lane', 'A gabled bay, a porch roof, windows upstairs.', storeys)
];
