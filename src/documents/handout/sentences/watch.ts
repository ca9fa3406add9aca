import { sentences } from './sentence.ts';

/** Bleeding, infection, medicines, and where to turn. */
export const watchSentences = [
  ...sentences('leaflet-press-twice', 'Q', [
    ['bleed-title', 'If it bleeds', 'Si sangra'],
    [
      'bleed-press',
      'Press hard on it with a clean cloth for {minutes} minutes by the clock. Do not look under it before then.',
      'Presione fuerte con una tela limpia durante {minutes} minutos. Mida el tiempo con un reloj y no levante la tela antes.',
    ],
    [
      'bleed-again',
      'If it still bleeds, press again in the same way, {times} times in all.',
      'Si sigue sangrando, vuelva a presionar igual, {times} veces en total.',
    ],
    [
      'bleed-call',
      'If it has not stopped by then, call us. If you cannot reach us, go to an emergency room.',
      'Si no para, llámenos. Si no contestamos, vaya a una sala de emergencias.',
    ],
  ]),
  ...sentences('leaflet-fever', 'Q', [
    ['call-title', 'Call us if', 'Llámenos si'],
    [
      'call-fever',
      'You have a fever of {fahrenheit} °F ({celsius} °C) or more.',
      'Tiene fiebre de {celsius} °C ({fahrenheit} °F) o más.',
    ],
    [
      'call-red',
      'The red area grows or has red streaks, or the skin feels hot.',
      'La zona roja crece, salen rayas rojas o la piel está caliente.',
    ],
    ['call-pus', 'There is pus or a bad smell.', 'Sale pus o huele mal.'],
    [
      'call-pain',
      'Pain or swelling gets worse, not better.',
      'El dolor o la hinchazón empeoran en vez de mejorar.',
    ],
  ]),
  ...sentences('common', 'common', [
    ['call-open', 'The wound opens.', 'Se abre la herida.'],
    [
      'call-rash',
      'You get an itchy rash where the dressing was.',
      'Le sale un sarpullido con comezón donde estaba el vendaje.',
    ],
    ['er-title', 'Go to an emergency room if', 'Vaya a una sala de emergencias si'],
    [
      'er-bleed',
      'Blood keeps soaking through while you press.',
      'La sangre sigue traspasando la tela mientras presiona.',
    ],
    [
      'er-sick',
      'You have a fever and feel very ill or confused.',
      'Tiene fiebre y se siente muy mal o tiene confusión.',
    ],
    [
      'er-breath',
      'You cannot breathe well, your face or throat swells, or you faint. Call 911 or your emergency number.',
      'No respira bien, se le hincha la cara o la garganta, o se desmaya. Llame al 911 o a su número de emergencias.',
    ],
  ]),
  ...sentences('accp-anticoagulants', 'Q', [
    ['medicine-title', 'Your medicines', 'Sus medicinas'],
    [
      'medicine-keep',
      'Keep taking {medicine} as prescribed, unless your clinician says to stop.',
      'Siga tomando {medicine} según la receta, a menos que su médico le diga que no.',
    ],
    [
      'medicine-ask',
      'Ask your clinician when and how to take {medicine}.',
      'Pregunte a su médico cuándo y cómo tomar {medicine}.',
    ],
  ]),
  ...sentences('format', 'format', [
    ['stitches-title', 'Taking out the stitches', 'Cuándo se quitan los puntos'],
    ['stitches-on', 'They come out on {date}.', 'Se quitan el {date}.'],
    ['stitches-between', 'They come out between {from} and {to}.', 'Se quitan entre el {from} y el {to}.'],
    [
      'stitches-ask',
      'They have to come out. If we have not given you a day, call us.',
      'Hay que quitarlos. Si no le dimos un día, llámenos.',
    ],
    [
      'stitches-where',
      'We take them out at {practice}. Do not take them out yourself. Call us if you have no appointment.',
      'Se los quitamos en {practice}. No se los quite usted. Llámenos si no tiene cita.',
    ],
    [
      'stitches-where-us',
      'We take them out. Do not take them out yourself. Call us if you have no appointment.',
      'Se los quitamos nosotros. No se los quite usted. Llámenos si no tiene cita.',
    ],
    ['phone-title', 'How to reach us', 'Cómo comunicarse con nosotros'],
    ['phone', 'Telephone: {phone}', 'Teléfono: {phone}'],
    ['phone-after-hours', 'After hours: {phone}', 'Fuera de horario: {phone}'],
    [
      'phone-blank',
      'Telephone (please write the number here): ____________________',
      'Teléfono (escriba aquí el número): ____________________',
    ],
    [
      'foot-told',
      'If we told you something else in person, do what we told you.',
      'Si en persona le indicamos otra cosa, siga esa indicación.',
    ],
    [
      'foot-review',
      'Draft wording: not yet reviewed by a clinician or a certified translator.',
      'Texto en borrador: aún no lo ha revisado un médico ni un traductor certificado.',
    ],
  ]),
  ...sentences('result-leaflets', 'Q', [
    ['result-title', 'Your result', 'Su resultado'],
    ['result-by', 'It should be here by {date}.', 'Debe llegar a más tardar el {date}.'],
    ['result-slow', 'One test takes longer, until {date}.', 'Una prueba tarda más, hasta el {date}.'],
    [
      'result-call',
      'If nobody has called you by then, call us. No news does not mean good news.',
      'Si para entonces no le hemos llamado, llámenos. Que no haya noticias no quiere decir que todo esté bien.',
    ],
    [
      'result-ask',
      'Ask us when your result will be here, and call us if nobody calls you.',
      'Pregunte cuándo llegará su resultado y llámenos si no le llamamos.',
    ],
    [
      'result-in',
      'Your result is here. Call us if nobody has talked with you about it.',
      'Su resultado ya llegó. Llámenos si nadie le ha hablado de él.',
    ],
    [
      'result-not-sent',
      'Nothing was sent to a laboratory. There is no result to wait for.',
      'No se envió nada al laboratorio. No hay resultado que esperar.',
    ],
    ['result-diagnosis', 'As we told you: {diagnosis}.', 'Como le dijimos: {diagnosis}.'],
  ]),
];
