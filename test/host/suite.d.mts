export interface Result {
  readonly tests: number;
  readonly passes: number;
  readonly failures: number;
}

export function listener(say?: (line: string) => void): {
  readonly heard: { readonly result: Result | undefined };
  readonly hear: (line: string) => boolean;
};

export function complaint(code: number | string, result: Result | undefined): string | undefined;
