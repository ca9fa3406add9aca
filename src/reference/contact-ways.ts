import type { Sourced, WordRow } from './types.ts';

/**
 * What words about reaching a patient say: that the patient (or a parent or guardian) heard it; that somebody tried in
 * vain; that it was sent or left, so that nobody knows; that it is still to come.
 */
export type ContactKind = 'told' | 'channel' | 'attempt' | 'unclear' | 'planned';

/** Words of telling. Common practice of US clinics, from memory; no source lists them. */
export interface ContactRow extends WordRow, Sourced {
  readonly kind: ContactKind;
}

const row = (name: string, kind: ContactKind, words: string): ContactRow => ({
  name,
  kind,
  synonyms: words.split('|').filter((word) => word !== ''),
  source: 'format',
  mark: 'common',
});

const patients = ['patient', 'pt', 'the patient', 'the pt', 'parent', 'guardian', 'mother', 'father'];

/** A word of telling with the patient before or after it: "informed patient", "pt was informed". */
function withPatient(before: readonly string[], after: readonly string[]): string {
  return patients
    .flatMap((who) => [...before.map((word) => `${word} ${who}`), ...after.map((word) => `${who} ${word}`)])
    .join('|');
}

/** Ways in which a patient is told, and in which that fails. Where words overlap the longest counts. */
export const contacts: readonly ContactRow[] = [
  row(
    'spoke with the patient',
    'told',
    'spoke with|spoke to|spoke|s/w|s/w pt|d/w|d/w pt|spoke w|spoken with|spoken to|talked with|talked to|speaking with|conversation with|' +
      'discussed|discussed with|reviewed with|went over|gone over|explained|informed|notified|advised|told|relayed|' +
      'conveyed|communicated|disclosed|results given|result given|given results|given the results|given result|' +
      'results provided|delivered in person|gave results|gave result|gave the results|gave pt results|reached|contacted successfully',
  ),
  row(
    'the patient answered',
    'told',
    `verbalized understanding|voiced understanding|expressed understanding|verbalises understanding|verbalizes understanding|` +
      `understands|understood|acknowledged|acknowledges|confirmed understanding|agrees with plan|agrees to plan|agreed to plan|` +
      `all questions answered|questions answered|aware|aware of results|in agreement|teach back|` +
      withPatient(
        [],
        [
          'called back',
          'called us back',
          'called the office back',
          'called the clinic back',
          'returned call',
          'returned our call',
          'returned the call',
          'returned my call',
          'called in',
          'called the office',
          'called the clinic',
          'picked up',
          'answered',
          'replied',
          'responded',
          'wrote back',
          'is aware',
          'reached',
          'was reached',
          'was told',
          'was informed',
        ],
      ),
  ),
  row(
    'read receipt',
    'told',
    'read|viewed|opened|read receipt|read by patient|read by pt|patient read|pt read|patient has read|pt has read|was read|message read|marked as read|' +
      'has been read|viewed by patient|viewed by pt|patient viewed|pt viewed|patient has viewed|pt has viewed|was viewed|' +
      'opened by patient|opened by pt|patient opened|pt opened|seen by patient|seen by pt|patient saw|pt saw|' +
      'signed for by patient|signed for by pt|receipt signed|signed receipt|receipt confirmed|confirmed receipt|receipt acknowledged|' +
      'confirms receipt|viewed in portal|viewed on portal|viewed in the portal|viewed online|read in portal|read on portal',
  ),
  row(
    'in person',
    'told',
    'face to face|in person|in-person|in the room|at the visit|at visit|during visit|during the visit|at suture removal|at appointment|' +
      'at the appointment|at follow up|at follow-up|at office visit|bedside|at bedside|in office|in the office|in clinic',
  ),
  row(
    'telephone',
    'channel',
    'phone|by phone|phone call|telephone call|phoned|telephoned|tc|t/c|cell|cell phone|mobile|home phone|tel|call|phone conversation|by telephone',
  ),
  row(
    'visit',
    'channel',
    'office visit|clinic visit|appointment|office|clinic|return visit|consultation|consult|nurse visit',
  ),
  row(
    'video',
    'channel',
    'video visit|video call|video conference|telehealth|telehealth visit|telemedicine|televisit|virtual visit|virtual|e-visit|telephone visit|phone visit',
  ),
  row(
    'voicemail',
    'attempt',
    'voice mail|voice message|voicemessage|left message|left a message|left msg|left a msg|left mssg|left voicemail|message left|msg left|' +
      'LVM|LM|LMOM|LMOVM|LMOAM|LMTCB|LMTC|LMTRC|LM TCB|VM|VMs|v/m|v-mail|answering machine|answering service|machine|recording|recorded message|' +
      'left detailed message|left a detailed message|left generic message|left a generic message|left brief message|left number|left word|' +
      'left callback number|left call back number|callback requested|call back requested|call-back requested|' +
      'asked to call back|asking to call back|asked for call back|please call back|please call|requested call back|requested callback|requesting call back|' +
      'requested a call back|to call back|to call us back|to call office|to call the office|to call clinic|to call the clinic|to return call|' +
      'return call requested|awaiting call back|awaiting callback|awaiting return call|awaiting reply|awaiting response|waiting for call back|' +
      'waiting for callback|waiting to hear back|TCB|will try again|will try later|try again|try later|called again',
  ),
  row(
    'not reached',
    'attempt',
    'nobody|no one|spoke with nobody|spoke to nobody|spoke with no one|spoke to no one|reaching|without reaching|without speaking|without contact|without answer|without reply|without response|line dropped|line went dead|line cut|dropped|before results|before telling|before I could|before discussing|no answer|no ans|NA|no reply|no response|no pick up|no pickup|no contact|no luck|no show|no-show|did not answer|does not answer|doesnt answer|' +
      "didn't answer|doesn't answer|not answering|not answered|unanswered|did not pick up|didn't pick up|not picking up|would not pick up|" +
      'unable to reach|unable to contact|unable to leave|unable to get a hold|unable to get hold|unable to connect|unable to locate|unable|' +
      'could not reach|could not be reached|could not contact|could not leave|could not get through|could not get hold|could not connect|' +
      "couldn't reach|couldn't get|couldn't leave|couldn't connect|cannot reach|can't reach|can not reach|cannot be reached|cannot leave|can't leave|" +
      'unsuccessful|unsuccessfully|without success|not successful|failed|in vain|to no avail|unreachable|not reachable|not available|unavailable|' +
      'not home|not at home|not in|was out|out of town|asleep|sleeping|busy|line busy|busy signal|rang out|rings out|rang and rang|just rang|just rings|no ring|kept ringing|keeps ringing|ringing|' +
      'wrong number|wrong person|number changed|disconnected|out of service|not in service|no longer in service|number not working|not working|not working number|non working number|' +
      'invalid number|not a valid number|no working number|no number|number invalid|' +
      'not accepting calls|not accepting|mailbox full|mail box full|box full|mailbox is full|mailbox was full|mailbox not set up|not set up|has not been set up|mailbox|' +
      'no voicemail|no vm|no voicemail set up|hung up|hangs up|call dropped|dropped call|call failed|cut off|blocked|call screening|screened|' +
      'attempt|attempted|attempts|att|tried|trying|tried to call|tried calling|tried to reach|not reached|did not reach|called x2|called x3|' +
      'returned to sender|RTS|undeliverable|undelivered|not delivered|delivery failed|failed delivery|bounced|bounced back|letter returned|mail returned|letter came back|came back|returned unopened|returned mail|returned by post office|' +
      'returned unclaimed|unclaimed|not claimed|refused delivery|moved|no forwarding address|' +
      'not opened|unopened|never opened|not yet opened|unread|not read|not yet read|never read|not viewed|not yet viewed|unviewed|not seen|not yet seen|' +
      'not activated|not active|inactive|no portal|no portal account|not signed up|never logged in|not logged in|has not logged in|no login|' +
      "has not opened|has not read|has not viewed|has not been read|has not been viewed|has not been opened|did not open|did not read|hasn't read|hasn't opened|hasn't viewed|" +
      'not been opened|not been read|not been viewed|not informed|not told|not notified|not discussed|missed call|missed appointment|missed visit|' +
      'did not come|did not show|DNA|DNKA|cancelled|canceled|rescheduled|no call back|no callback|no return call|never called back|has not called back|did not call back|not called back',
  ),
  row(
    'sent',
    'unclear',
    'letter|mail|mailed|letter sent|letter mailed|certified letter|certified mail|registered mail|post|posted|postcard|by mail|usps|fax|faxed|' +
      'portal|portal message|patient portal|message|messaged|message sent|sent message|sent|text|text message|texted|sms|email|e-mail|emailed|e-mailed|secure message|' +
      'released|released to portal|results released|auto released|autoreleased|posted to portal|available in portal|available on portal|automated call|robocall|' +
      'called|called pt|called patient|called the patient|contacted|call placed|call made|phone call placed|' +
      'result available|copy given|printout|handout|left at front desk|yes|done|ok|complete|completed|unknown|unclear|not sure|see chart|see note|per protocol|usual|standard',
  ),
  row(
    'still to come',
    'planned',
    'will|to be told|to be called|to be informed|to be notified|to be discussed|to discuss|to call|to inform|to notify|plan to|plans to|planning to|' +
      'going to|needs to|need to|should be|pending|scheduled to|scheduled for|appointment made|appt made|appointment scheduled|appt scheduled|tomorrow|next week|later today|todo|to do',
  ),
];

/** Persons who are neither the patient nor somebody who decides for the patient. */
export const otherPersons: readonly WordRow[] = [
  {
    name: 'another person',
    synonyms: (
      'wife|husband|spouse|partner|girlfriend|boyfriend|fiance|fiancee|significant other|daughter|son|sister|brother|sibling|aunt|uncle|' +
      'cousin|niece|nephew|grandmother|grandfather|grandson|granddaughter|grandchild|grandma|grandpa|daughter-in-law|son-in-law|in-law|family|family member|' +
      'relative|roommate|housemate|neighbor|neighbour|friend|caregiver|carer|caretaker|home health aide|aide|housekeeper|nanny|babysitter|' +
      'coworker|co-worker|boss|secretary|receptionist|operator|answering person|someone|somebody|someone else|a man|a woman|another person|household member|' +
      'nursing home|nursing home staff|facility staff|facility nurse|staff at facility|group home|assisted living|nurse at facility|emergency contact|landlord|stepson|stepdaughter|' +
      'PCP|primary care|primary care office|PCP office|referring office|referring provider|referring physician|referring doctor|referring|office staff|kid|child at home'
    ).split('|'),
  },
];

/** The patient, or who decides for the patient. */
export const patientWords: readonly WordRow[] = [
  {
    name: 'the patient',
    synonyms: (
      'pt|patient|herself|himself|parent|parents|mother|father|mom|mum|dad|guardian|legal guardian|conservator|power of attorney|POA|HCPOA|' +
      'healthcare proxy|health care proxy|healthcare surrogate|client'
    ).split('|'),
  },
];
