/**
 * Arithmetic as it is shown: + − × ÷ ^ ( ), numbers, single-word symbols, and tan, sin, cos, arctan (of angles in degrees) and √, each with brackets. Used to check that what is displayed
 * re-evaluates to what is displayed; the tests use the same reader on the text of the page.
 */

export type Token =
	| { kind: 'number'; text: string; value: number }
	| { kind: 'symbol'; text: string }
	| { kind: 'function'; text: string }
	| { kind: 'operator'; text: '+' | '−' | '×' | '÷' | '^' | '(' | ')' }
	| { kind: 'space'; text: string };

const operators: Readonly<Record<string, '+' | '−' | '×' | '÷' | '^' | '(' | ')'>> = {
	'+': '+',
	'-': '−',
	'−': '−',
	'–': '−',
	'*': '×',
	'·': '×',
	'×': '×',
	'/': '÷',
	'÷': '÷',
	'^': '^',
	'(': '(',
	')': ')'
};

const degrees = Math.PI / 180;
/** Angles in degrees, as on a school's calculator. */
const functions: Readonly<Record<string, (x: number) => number>> = {
	tan: (x) => Math.tan(x * degrees),
	sin: (x) => Math.sin(x * degrees),
	cos: (x) => Math.cos(x * degrees),
	arctan: (x) => Math.atan(x) / degrees,
	'√': Math.sqrt
};

/** The expression in tokens, spaces kept; null when something in it is no arithmetic. */
export function tokens(expression: string): Token[] | null {
	const found: Token[] = [];
	let rest = expression;
	while (rest !== '') {
		const space = /^\s+/.exec(rest)?.[0];
		const number = /^(\d+(\.\d+)?|\.\d+)(?![\p{L}_])/u.exec(rest)?.[0];
		const applied = /^(tan|sin|cos|arctan|√)(?=\()/.exec(rest)?.[0];
		const symbol = applied ? undefined : /^[\p{L}_Δ][\p{L}\p{N}_′'₀-₉]*/u.exec(rest)?.[0];
		const operator = operators[rest[0]!];
		if (space) found.push({ kind: 'space', text: space });
		else if (number) found.push({ kind: 'number', text: number, value: Number(number) });
		else if (applied) found.push({ kind: 'function', text: applied });
		else if (symbol) found.push({ kind: 'symbol', text: symbol });
		else if (operator) found.push({ kind: 'operator', text: operator });
		else return null;
		rest = rest.slice((space ?? number ?? applied ?? symbol ?? rest[0]!).length);
	}
	return found;
}

/**
 * The value of an expression, symbols taken from `values`. NaN for what is no arithmetic or a symbol without a value.
 * Usual precedence; ^ binds tightest and to the right; a leading minus is weaker than ^ (−2 ^ 2 = −4).
 */
export function evaluate(expression: string, values: Readonly<Record<string, number>> = {}): number {
	const list = tokens(expression)?.filter((token) => token.kind !== 'space');
	if (!list || list.length === 0) return NaN;
	let at = 0;
	const is = (text: string) => list[at]?.kind === 'operator' && list[at]!.text === text;

	function sum(): number {
		let value = product();
		while (is('+') || is('−')) {
			const minus = list![at++]!.text === '−';
			const next = product();
			value = minus ? value - next : value + next;
		}
		return value;
	}
	function product(): number {
		let value = signed();
		while (is('×') || is('÷')) {
			const divide = list![at++]!.text === '÷';
			const next = signed();
			value = divide ? value / next : value * next;
		}
		return value;
	}
	function signed(): number {
		if (is('−')) {
			at++;
			return -signed();
		}
		return power();
	}
	function power(): number {
		const base = atom();
		if (!is('^')) return base;
		at++;
		return base ** signed();
	}
	function atom(): number {
		const token = list![at++];
		if (token?.kind === 'number') return token.value;
		if (token?.kind === 'symbol') return Object.hasOwn(values, token.text) ? values[token.text]! : NaN;
		if (token?.kind === 'function') {
			at++;
			return functions[token.text]!(bracketed());
		}
		return token?.kind === 'operator' && token.text === '(' ? bracketed() : NaN;
	}
	function bracketed(): number {
		const value = sum();
		if (!is(')')) return NaN;
		at++;
		return value;
	}

	const value = sum();
	return at === list.length ? value : NaN;
}
