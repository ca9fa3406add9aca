/** What an editor's file system says about a folder. */
interface Folder {
  readonly ctime: number;
  readonly mtime: number;
  readonly names: readonly string[];
}

/**
 * The folders that a walk has entered. A link may lead back to one of them, and an editor's file system does not say where a
 * link leads: a folder that was made and changed in the same millisecond and has the same names is taken for the same one,
 * where either was reached by a link.
 */
export class Entered {
  constructor(
    private readonly known = new Map<string, boolean>(),
    private readonly byLink = false,
  ) {}

  /** The same walk, below a link. */
  linked(): Entered {
    return new Entered(this.known, true);
  }

  /** Whether a folder was not entered before; then it is from now on. */
  isNew({ ctime, mtime, names }: Folder): boolean {
    const key = JSON.stringify([ctime, mtime, [...names].sort()]);
    const before = this.known.get(key);
    if (before !== undefined && (before || this.byLink)) return false;
    this.known.set(key, this.byLink);
    return true;
  }
}
