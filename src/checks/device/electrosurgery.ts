import type { Report, Severity } from '../../note/tree/finding.ts';
import { byGravity } from '../../note/tree/severity.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { currentsOf, type Energy } from '../current.ts';
import { specify } from '../hemostasis/_specify.ts';
import { distanceTo } from './_place.ts';
import { devicesOf, type Device } from './_electrosurgery.ts';

type Form =
  | 'forbidden'
  | 'near'
  | 'placeUnknown'
  | 'far'
  | 'farDependent'
  | 'cochlear'
  | 'cochlearFar'
  | 'cochlearUnknown'
  | 'ask'
  | 'unruled'
  | 'open'
  | 'openAsk';

interface Verdict {
  readonly device: Device;
  readonly severity: Severity;
  readonly form: Form;
}

const headAndNeck: ReadonlySet<SiteRegion> = new Set([
  'scalp',
  'face',
  'eye',
  'nose',
  'ear',
  'mouth',
  'neck',
]);

function verdictOn(device: Device, procedure: Procedure | undefined, subject: Subject): Verdict | undefined {
  const concern = device.row.concern;
  if (device.open) return onOpen(device);
  if (concern === 'forbidden') return { device, severity: 'error', form: 'forbidden' };
  if (concern === 'pacemaker') return onPacemaker(device, procedure, subject);
  if (concern === 'cochlear') return onCochlear(device, procedure, subject);
  if (concern === 'unruled') return { device, severity: 'warning', form: 'unruled' };
  return concern === 'ask' ? { device, severity: 'information', form: 'ask' } : undefined;
}

/** What is left open is a warning where it would be more if it were said. */
const onOpen = (device: Device): Verdict =>
  device.row.concern === 'ask'
    ? { device, severity: 'information', form: 'openAsk' }
    : { device, severity: 'warning', form: 'open' };

function onPacemaker(device: Device, procedure: Procedure | undefined, subject: Subject): Verdict {
  const { where, dependent } = device.implant;
  const distance = distanceTo(where?.value, procedure && subject.siteOf(procedure), subject.tables);
  if (distance === 'unknown') return { device, severity: 'error', form: 'placeUnknown' };
  if (distance === 'near') return { device, severity: 'error', form: 'near' };
  return { device, severity: 'warning', form: dependent?.value === true ? 'farDependent' : 'far' };
}

function onCochlear(device: Device, procedure: Procedure | undefined, subject: Subject): Verdict {
  const region = procedure && subject.siteOf(procedure)?.base.region;
  if (region === undefined) return { device, severity: 'warning', form: 'cochlearUnknown' };
  return headAndNeck.has(region)
    ? { device, severity: 'error', form: 'cochlear' }
    : { device, severity: 'information', form: 'cochlearFar' };
}

function reportOf(energy: Energy, verdicts: readonly Verdict[], site: string): Report {
  const [worst] = verdicts as readonly [Verdict, ...Verdict[]];
  return {
    at: energy.leaf,
    severity: worst.severity,
    form: worst.form,
    rests: worst.device.row,
    args: {
      word: energy.leaf.text,
      device: worst.device.row.name,
      where: worst.device.implant.where?.value ?? 'a place that is not given',
      site,
      unsaid: energy.stops === 'either' ? ' The word may mean heat or current, and counts as current.' : '',
    },
    related: verdicts.map(({ device: { at, row } }) => ({
      start: at.start,
      end: at.end,
      form: 'device',
      args: { device: row.name },
    })),
    data: energy.stops === 'either' && energy.hemostasis,
  };
}

const instead = 'Use heat cautery, bipolar forceps, aluminum chloride, pressure or a stitch instead.';

export const check: Check = {
  code: 'device/electrosurgery',
  severity: 'error',
  title: 'Electrosurgical current in a patient with an implanted device',
  why: 'Current can stop a pacemaker, set off a defibrillator and run through the leads of a stimulator into nerves. Hot-wire cautery passes no current through the patient, bipolar forceps only between their tips. For a pacemaker far from the site surgeons use short bursts at low power; some sources ask for more care than others, and the manufacturer of the device has the last word.',
  sources: [
    { source: 'device-survey-2001', mark: 'Q' },
    { source: 'device-survey-2019', mark: 'Q' },
    { source: 'device-advice-2013', mark: 'Q' },
    { source: 'device-plan-1998', mark: 'Q' },
    { source: 'device-management-2013', mark: 'Q' },
    { source: 'device-cautery-series', mark: 'Q' },
    { source: 'procedure-text-agents', mark: 'Q' },
    { source: 'nerve-stimulators-2019', mark: 'Q' },
    { source: 'dbs-1999', mark: 'Q' },
    { source: 'dbs-2019', mark: 'Q' },
    { source: 'cochlear-2017', mark: 'Q' },
    { source: 'cochlear-2023', mark: 'Q' },
    { source: 'device-memory', mark: 'M' },
  ],
  messages: {
    forbidden: `\`{word}\`: no electrosurgical current with {device}.{unsaid} ${instead}`,
    near: `\`{word}\`: no electrosurgical current on {site}, near the {device} ({where}).{unsaid} ${instead}`,
    placeUnknown: `\`{word}\`: it is not clear where the {device} is relative to this site, so it counts as near.{unsaid} Write \`where\`, such as left chest, or use heat or bipolar forceps.`,
    far: '`{word}` with {device} ({where}), away from the site: bursts under 5 seconds at the lowest power, the return pad so that the current does not cross the device.{unsaid} Heat cautery or bipolar forceps are safer.',
    farDependent:
      '`{word}` with {device} ({where}), on which the patient depends: use heat cautery or bipolar forceps, or bursts under 5 seconds at the lowest power under monitoring.{unsaid}',
    cochlear: `\`{word}\`: no monopolar current on head or neck with {device}: a review of 2017 advises against it, on weak evidence.{unsaid} ${instead}`,
    cochlearFar:
      '`{word}` with {device}, away from head and neck: keep the return pad below, so that the current does not pass the head.{unsaid}',
    cochlearUnknown:
      '`{word}` with {device}: the site is not known here. On head or neck a review of 2017 advises against monopolar current, on weak evidence.{unsaid}',
    ask: '`{word}` with {device}: no rule was found for this device. Ask its manufacturer or the clinic that follows it, or use heat cautery.{unsaid}',
    unruled: `\`{word}\` with {device}, which may be electronic: no rule was found for it. Ask its manufacturer or its clinic before current is used. ${instead}{unsaid}`,
    open: `\`{word}\`: the note leaves open whether the patient has {device}.{unsaid} Ask before current is used, and write what it is. ${instead}`,
    openAsk:
      '`{word}`: the note leaves open whether the patient has {device}.{unsaid} Ask, and write what it is.',
    device: 'the {device}',
  },
  alternatives: { readAs: [] },
  unclear: ({ form, args }) =>
    form === 'open' || form === 'openAsk' ? { key: 'implants', name: String(args['device']) } : undefined,
  sourcesDiffer: {
    how: 'Surveys find short bursts far from a pacemaker without harm, makers of some devices forbid all current. For defibrillators and stimulators the makers are followed, for pacemakers the surveys.',
    settings: [],
  },
  find(subject) {
    const found: Report[] = [];
    for (const { procedure, energy } of currentsOf(subject)) {
      const verdicts = devicesOf(subject)
        .map((device) => verdictOn(device, procedure, subject))
        .filter((one) => one !== undefined)
        .sort((a, b) => byGravity(a.severity, b.severity));
      if (verdicts.length > 0) found.push(reportOf(energy, verdicts, procedure?.site?.value ?? 'this site'));
    }
    return found;
  },
  fix: (_, finding) => (finding.data === true ? specify(finding) : []),
};
