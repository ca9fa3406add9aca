import fc from 'fast-check';

/** Texts that would do harm where they are taken for more than text. */
export const hostile: readonly string[] = [
  'a\r\nBcc: other@example.org\r\n\r\nbody',
  'a\nEND:VEVENT\nBEGIN:VEVENT\nUID:x',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '</style></title><b>',
  '&lt;b&gt; & "quotes" \'single\'',
  '=HYPERLINK("http://example.org")',
  '+1+1',
  '@SUM(A1)',
  '-2+3',
  '\u001b[31mred\u0007\u0000\u007f\u009b1m',
  'a\u202edcba\u2066x\u2069\u200b\ufeff',
  '\ud800 half \udfff',
  '--=_wheal_alternative\r\nContent-Type: text/html\r\n\r\n<b>',
  '=?utf-8?Q?=0D=0ABcc:_x?=',
  '{phone} {minutes} ${x} $& $1',
  'ñ á ü ¿? — “” 你好 🙂'.repeat(30),
  'x'.repeat(3000),
  'constructor',
  '__proto__',
  '\u2028line\u2029paragraph\u0085next',
];

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...hostile),
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: fc.constantFrom(...Array.from('\r\n;:,\\"<>&={}@ -_?\t\u0000é🙂a')) }),
);
