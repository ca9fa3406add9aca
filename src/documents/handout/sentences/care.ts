import { sentences } from './sentence.ts';

/** Care of the wound, and what is normal. */
export const careSentences = [
  ...sentences('aftercare-leaflets', 'Q', [
    ['care-title', 'Caring for the wound', 'Cómo cuidar la herida'],
    [
      'care-first-hours',
      'Leave the first dressing on and dry for {hours} hours.',
      'Deje el primer vendaje puesto y seco por {hours} horas.',
    ],
    [
      'care-first-days',
      'Leave the first dressing on and dry for {days} days.',
      'Deje el primer vendaje puesto y seco por {days} días.',
    ],
    [
      'care-first-morning',
      'Leave the first dressing on and dry until the next morning.',
      'Deje el primer vendaje puesto y seco hasta la mañana siguiente.',
    ],
    ['care-first-other', 'First dressing: {when}.', 'Primer vendaje: {when}.'],
    ['care-dry-hours', 'Keep the wound dry for {hours} hours.', 'Mantenga la herida seca por {hours} horas.'],
    ['care-dry-days', 'Keep the wound dry for {days} days.', 'Mantenga la herida seca por {days} días.'],
    [
      'care-dry-morning',
      'Keep the wound dry until the next morning.',
      'Mantenga la herida seca hasta la mañana siguiente.',
    ],
    ['care-dry-other', 'Keep the wound dry: {when}.', 'Mantenga la herida seca: {when}.'],
    [
      'care-wash',
      'Then wash your hands and clean the wound once a day with soap and water. Pat it dry.',
      'Después, lávese las manos y limpie la herida una vez al día con agua y jabón. Séquela con toques suaves.',
    ],
    ['care-ointment', 'Put a thin layer of {ointment} on it.', 'Ponga una capa fina de {ointment}.'],
    [
      'care-no-ointment',
      'Do not put ointment on it unless we tell you to.',
      'No ponga ungüento a menos que se lo digamos.',
    ],
    [
      'care-cover',
      'Cover it with a clean dressing each day until it has healed.',
      'Cúbrala cada día con un vendaje limpio hasta que sane.',
    ],
    ['care-open', 'After that, leave it open to the air.', 'Después, déjela al aire.'],
    [
      'care-water',
      'You can shower from the first cleaning on. No bath or swimming until the wound has healed.',
      'Puede ducharse desde la primera limpieza. No se bañe en tina ni nade hasta que sane la herida.',
    ],
    [
      'care-rest',
      'No hard exercise or heavy lifting for 3 days.',
      'No haga ejercicio fuerte ni levante cosas pesadas por 3 días.',
    ],
    [
      'care-pain',
      'For pain, you can take acetaminophen as the package says. Do not take aspirin or ibuprofen for pain unless your clinician says so.',
      'Para el dolor puede tomar acetaminofén (paracetamol) como dice la caja. No tome aspirina ni ibuprofeno para el dolor a menos que se lo indiquen.',
    ],
  ]),
  ...sentences('dermatology-nursing-antibiotics', 'Q', [
    [
      'care-avoid',
      'Because of your allergy, do not use an ointment with any of these in it: {things}.',
      'Por su alergia, no use un ungüento que tenga algo de esto: {things}.',
    ],
  ]),
  ...sentences('common', 'common', [
    [
      'care-no-tape',
      'Tape or sticky dressings can give you a rash. Ask us what to use.',
      'La cinta o los vendajes adhesivos le pueden irritar la piel. Pregunte qué usar.',
    ],
    [
      'care-glue',
      'Keep ointment off skin glue, and do not pick at it. It comes off on its own.',
      'No ponga ungüento sobre el pegamento ni lo arranque. Se cae solo.',
    ],
    [
      'care-strips',
      'Leave the strips on until they fall off.',
      'Deje las tiras puestas hasta que se caigan solas.',
    ],
    ['care-each', 'This is for each wound.', 'Esto es para cada herida.'],
    [
      'care-stretch',
      'Do not stretch the skin there until the stitches are out.',
      'No estire la piel de esa zona hasta que le quiten los puntos.',
    ],
    [
      'place-hair',
      'A bandage does not hold in hair. Leave the place uncovered, and be gentle with comb and towel.',
      'Un vendaje no se queda en el pelo. Deje la zona sin cubrir y tenga cuidado con el peine y la toalla.',
    ],
    [
      'place-fold',
      'Skin rubs on skin there. Keep it dry, and change a damp dressing at once.',
      'Ahí la piel roza con la piel. Manténgala seca y cambie el vendaje si se moja.',
    ],
    [
      'place-uncovered',
      'A bandage does not hold at that place. You can leave it uncovered.',
      'Un vendaje no se queda en esa zona. Puede dejarla sin cubrir.',
    ],
    [
      'place-wet',
      'The wound is where the skin is moist. Ask us how to clean it, and do not use soap or ointment there.',
      'La herida está donde la piel es húmeda. Pregunte cómo limpiarla y no use ahí jabón ni ungüento.',
    ],
    [
      'place-mouth',
      'Do not eat or drink hot things until the numb feeling is gone.',
      'No coma ni beba cosas calientes hasta que se le pase lo dormido.',
    ],
    ['place-eye', 'Keep soap and ointment out of the eye.', 'Que no le entre jabón ni ungüento en el ojo.'],
    [
      'place-waistband',
      'Wear a loose waistband that does not rub there.',
      'Use ropa floja en la cintura para que no roce.',
    ],
    ['place-strap', 'Keep straps and bags from rubbing there.', 'Evite que un tirante o un bolso roce ahí.'],
    ['place-collar', 'Wear a soft, loose collar.', 'Use cuello suave y flojo.'],
    ['place-shoe', 'Wear a loose or open shoe.', 'Use un zapato flojo o abierto.'],
    ['place-seat', 'Do not sit on it for long.', 'No se siente mucho tiempo sobre la herida.'],
    [
      'place-slow',
      'Wounds on the lower leg and foot heal slowly. Put the leg up when you sit.',
      'Las heridas de la parte baja de la pierna y del pie sanan despacio. Suba la pierna cuando se siente.',
    ],
    [
      'care-reach',
      'You may not reach this wound by yourself. Ask us who can look after it with you.',
      'Tal vez no alcance la herida. Pregunte quién le puede ayudar a cuidarla.',
    ],
    ['normal-title', 'What is normal', 'Qué es normal'],
    ['normal-numb', 'The place may stay numb for a few hours.', 'La zona puede seguir dormida unas horas.'],
    [
      'normal-sore',
      'It may be a little sore, swollen and pink for a few days.',
      'Puede doler un poco, hincharse y ponerse rosada unos días.',
    ],
    [
      'normal-ooze',
      'A few spots of blood or clear fluid on the dressing are fine.',
      'Unas gotas de sangre o líquido claro en el vendaje son normales.',
    ],
    ['normal-blister', 'A blister can form. Do not open it.', 'Puede salir una ampolla. No la abra.'],
    [
      'normal-dark',
      'What stopped the bleeding can leave a dark stain for a while.',
      'Lo que paró la sangre puede dejar una mancha oscura por un tiempo.',
    ],
    ['scar-title', 'Sun and the scar', 'El sol y la cicatriz'],
    [
      'scar-mark',
      'Any biopsy leaves a mark that stays. Most fade in time.',
      'Toda biopsia deja una marca que no se quita. La mayoría se aclara con el tiempo.',
    ],
    [
      'scar-place',
      'The place keeps a mark. Most marks fade in time.',
      'En ese lugar queda una marca. La mayoría se aclara con el tiempo.',
    ],
    [
      'scar-sun',
      'Once it has healed, cover it or use sunscreen for some months.',
      'Cuando sane, cúbrala o use protector solar por unos meses.',
    ],
    [
      'scar-thick',
      'Call us if the scar gets thick or itchy.',
      'Llame si la cicatriz se pone gruesa o le pica.',
    ],
  ]),
];
