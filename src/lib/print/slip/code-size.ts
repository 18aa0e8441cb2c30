/** How large the code is printed: its modules as large as is useful, on a roll as whole dots of its printer. Millimetres. */
import { qrOf, quiet } from '../../ui/qr';
import { widthOn, type SlipPaper } from './papers';

/** Below this a module is not read from paper (`ui/qr.ts` says why). */
export const leastModule = 0.5;
/** What a phone reads at arm's length without hunting for it: common practice, no source. */
const usefulModule = 0.6;
const mostOnSheet = 65;
/** A receipt printer has 203 dots to the inch, 8 to the millimetre. A module of broken dots is drawn uneven. */
const dotsPerMm = 8;
const mostModuleOnRoll = 0.75;

/** Width of the code with its white border; null where no code of this text can be read from this paper. */
export function codeSize(text: string, paper: SlipPaper): number | null {
	const code = qrOf(text);
	if (!code) return null;
	const side = code.modules + 2 * quiet;
	const module =
		paper === 'receipt'
			? Math.min(mostModuleOnRoll, Math.floor((widthOn(paper) / side) * dotsPerMm) / dotsPerMm)
			: Math.min(usefulModule, mostOnSheet / side);
	return module < leastModule ? null : side * module;
}
