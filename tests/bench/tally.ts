/** Counts of what held out of what was looked at, by name, told in per cent. */
export class Tally {
  private readonly counts = new Map<string, { held: number; all: number }>();

  add(name: string, held: boolean): void {
    const count = this.counts.get(name) ?? { held: 0, all: 0 };
    count.all++;
    if (held) count.held++;
    this.counts.set(name, count);
  }

  print(): void {
    for (const name of [...this.counts.keys()].sort()) {
      const { held, all } = this.counts.get(name) ?? { held: 0, all: 0 };
      console.log(`${name.padEnd(58)}${((100 * held) / all).toFixed(1).padStart(6)} %  of ${all}`);
    }
  }
}
