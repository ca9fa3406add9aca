/** An example of a check's page. */
export interface Example {
  readonly text: string;
  readonly today: string;
  readonly practice: string | undefined;
}

/** The examples under a heading: ```yaml blocks, with the day in the fence (`yaml as-of 2026-03-20`); a block `yaml practice` before one belongs to it. */
export function examplesUnder(page: string, heading: 'Bad' | 'Good'): readonly Example[] {
  const section = page.split(/^## /m).find((part) => part.startsWith(`${heading}\n`)) ?? '';
  let practice: string | undefined;
  return [...section.matchAll(/^```yaml(.*)\n([\s\S]*?)^```$/gm)].flatMap(([, info = '', text = '']) => {
    if (info.trim() === 'practice') {
      practice = text;
      return [];
    }
    const example = {
      text: written(text, info),
      today: /as-of (\S+)/.exec(info)?.[1] ?? '2026-03-02',
      practice,
    };
    practice = undefined;
    return [example];
  });
}

/** What no page can show as it is: `yaml repeated 20001` means as many rows, `yaml escaped` has `\\0` for a sign. */
function written(text: string, info: string): string {
  const times = /repeated (\d+)/.exec(info)?.[1];
  if (times !== undefined) return text.repeat(Number(times));
  if (!info.includes('escaped')) return text;
  return text.replace(/\\(\d)/g, (_, code: string) => String.fromCharCode(Number(code)));
}
