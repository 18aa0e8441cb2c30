/** A binary heap of node numbers by key, smallest first. */
export class Heap {
	private readonly keys: number[] = [];
	private readonly nodes: number[] = [];
	/** Key of the node taken last. */
	key = 0;

	get size(): number {
		return this.nodes.length;
	}
	clear(): void {
		this.keys.length = 0;
		this.nodes.length = 0;
	}

	push(key: number, node: number): void {
		let i = this.keys.length;
		this.keys.push(key);
		this.nodes.push(node);
		while (i > 0) {
			const up = (i - 1) >> 1;
			if (this.keys[up]! <= key) break;
			this.keys[i] = this.keys[up]!;
			this.nodes[i] = this.nodes[up]!;
			i = up;
		}
		this.keys[i] = key;
		this.nodes[i] = node;
	}

	/** The node with the smallest key, −1 when there is none. */
	pop(): number {
		const taken = this.nodes[0];
		if (taken === undefined) return -1;
		this.key = this.keys[0]!;
		const key = this.keys.pop()!;
		const node = this.nodes.pop()!;
		const size = this.keys.length;
		if (size === 0) return taken;
		let i = 0;
		for (;;) {
			let down = 2 * i + 1;
			if (down >= size) break;
			if (down + 1 < size && this.keys[down + 1]! < this.keys[down]!) down++;
			if (this.keys[down]! >= key) break;
			this.keys[i] = this.keys[down]!;
			this.nodes[i] = this.nodes[down]!;
			i = down;
		}
		this.keys[i] = key;
		this.nodes[i] = node;
		return taken;
	}
}
