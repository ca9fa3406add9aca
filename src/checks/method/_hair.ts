import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Subject } from '../check.ts';
import { punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';
import type { Judge } from './_suspected.ts';
import { methodName, superficial } from './_procedure.ts';

/** Hairs are counted in a disc of this diameter or more, in mm. */
const hairDisc = 4;

export const hair: Judge = (procedure, subject) => {
  const { method, depth } = procedure;
  if (method === undefined || subject.siteOf(procedure)?.base.hairBearing !== true) return undefined;
  const name = methodName(procedure, subject);
  if (superficial.has(name) || name === 'deep shave')
    return { at: method, form: 'shave', args: { method: name ?? '' } };
  const found = depth === undefined ? undefined : shallow(depth, subject);
  return small(procedure, subject) ?? found ?? across(procedure) ?? alone(procedure, subject);
};

function small(procedure: Procedure, { tables }: Subject): Report | undefined {
  const punch = punchOf(procedure, tables);
  return punch === undefined || punch.mm >= hairDisc
    ? undefined
    : { at: punch.at, args: { size: punch.at.text } };
}

/** Hairs leave the skin at a slant: a cut at right angles to the skin goes through them. */
const rightAngle = /\b(?:perpendicular|at right angles|90 ?(?:degrees|deg\b)|straight down)|\b90 ?°/i;

const across = ({ instrument, remarks = [] }: Procedure): Report | undefined => {
  const at = [instrument, ...remarks].find((leaf) => rightAngle.test(leaf?.value ?? ''));
  return at === undefined ? undefined : { at, form: 'angle', severity: 'information' };
};

/** Words that say that the number of punches, or the plane of an only one, was chosen. */
const planes =
  /\b(?:horizontal|vertical|transverse|longitudinal|sections?|second|two|both|double|another|previous)\b/i;

/** One punch serves one plane of section; where the note says which, it was chosen. */
function alone(procedure: Procedure, { note, tables }: Subject): Report | undefined {
  const { question, size, specimen = [], remarks = [], method } = procedure;
  if (size === undefined || specimen.length > 1 || punchOf(procedure, tables) === undefined) return undefined;
  // The other punch has a procedure of its own.
  const punches = (note.procedures ?? []).filter(
    (one) => one.size !== undefined && one.method?.text === method?.text,
  );
  if (punches.length > 1) return undefined;
  const said = [question, ...remarks, method, ...specimen.flatMap(({ tests = [] }) => tests)];
  if (said.some((leaf) => planes.test(leaf?.value ?? ''))) return undefined;
  return { at: size, form: 'second', severity: 'information' };
}

function shallow(depth: Leaf<string>, { tables }: Subject): Report | undefined {
  const [row] = rowsIn(tables.depths, depth);
  if (row === undefined || row.reaches === 'subcutis') return undefined;
  return { at: depth, form: 'depth', severity: 'information', args: { depth: row.name } };
}
