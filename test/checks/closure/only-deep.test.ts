import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/only-deep', () => {
  const code = 'closure/only-deep';
  const deep = '{layer: deep, material: polyglactin, size: 4-0, count: 2}';

  it('flags the layer where nothing is said of the skin', () => {
    flags(code, note('closure: {layer: ⟦deep⟧, material: polyglactin, size: 4-0}'), {
      severity: 'information',
    });
    flags(
      code,
      note('closure: [{layer: ⟦dermal⟧, material: polyglactin}, {layer: deep, material: poliglecaprone}]'),
    );
  });

  it('is silent with a skin layer, strips or glue, or a layer without a name', () => {
    silent(code, note(`closure: [${deep}, {layer: skin, material: nylon, size: 5-0}]`));
    silent(code, note(`closure: [${deep}, {how: tissue glue}]`));
    silent(code, note(`closure: [${deep}, adhesive strips]`));
    silent(code, note(`closure: ${deep}`, 'dressing: [wound closure strips, gauze]'));
    silent(code, note('closure: {material: polyglactin, size: 4-0}'));
    silent(code, note('closure: {layer: ??, material: polyglactin}'));
  });
});
