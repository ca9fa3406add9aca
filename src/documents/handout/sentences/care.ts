import { sentences } from './sentence.ts';

/** Care of the wound, and what is normal. */
export const careSentences = [
  ...sentences('aftercare-leaflets', 'Q', [
    ['care-title', 'Caring for the wound', 'Cómo cuidar la herida'],
    [
      'care-first-hours',
      'Leave the first dressing on and dry for {hours} hours.',
      'Deje el primer vendaje puesto y seco durante {hours} horas.',
    ],
    [
      'care-first-days',
      'Leave the first dressing on and dry for {days} days.',
      'Deje el primer vendaje puesto y seco durante {days} días.',
    ],
    [
      'care-first-morning',
      'Leave the first dressing on and dry until the next morning.',
      'Deje el primer vendaje puesto y seco hasta la mañana siguiente.',
    ],
    [
      'care-first-asked',
      'Leave the first dressing on as long as we told you.',
      'Deje el primer vendaje puesto el tiempo que le indicamos.',
    ],
    [
      'care-dry-asked',
      'Keep the wound dry as long as we told you.',
      'Mantenga la herida seca el tiempo que le indicamos.',
    ],
    ['care-first-other', 'First dressing: {when}.', 'Primer vendaje: {when}.'],
    [
      'care-dry-hours',
      'Keep the wound dry for {hours} hours.',
      'Mantenga la herida seca durante {hours} horas.',
    ],
    ['care-dry-days', 'Keep the wound dry for {days} days.', 'Mantenga la herida seca durante {days} días.'],
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
    ['care-ointment', 'Put a thin layer of {ointment} on it.', 'Aplique una capa fina de {ointment}.'],
    [
      'care-ointment-asked',
      'Put a thin layer of the ointment on it that we told you.',
      'Aplique una capa fina del ungüento que le indicamos.',
    ],
    [
      'care-no-ointment',
      'Do not put ointment on it unless we tell you to.',
      'No aplique ungüento a menos que se lo indiquemos.',
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
      'No haga ejercicio fuerte ni levante cosas pesadas durante 3 días.',
    ],
    [
      'care-pain',
      'For pain, you can take acetaminophen as the package says. Do not take aspirin or ibuprofen for pain unless your clinician says so.',
      'Para el dolor puede tomar acetaminofén (paracetamol) según las indicaciones de la caja. No tome aspirina ni ibuprofeno para el dolor a menos que se lo indiquen.',
    ],
  ]),
  ...sentences('dermatology-nursing-antibiotics', 'Q', [
    [
      'care-avoid',
      'Because of your allergy, do not use an ointment with any of these in it: {things}.',
      'Por su alergia, no use ningún ungüento que contenga {things}.',
    ],
  ]),
  ...sentences('freezing-pages', 'Q', [
    ['treated-title', 'Caring for the treated spot', 'Cómo cuidar la zona tratada'],
    [
      'treated-wash',
      'Wash it gently each day with soap and water, and pat it dry. You can shower.',
      'Lave la zona con cuidado cada día con agua y jabón y séquela. Puede ducharse.',
    ],
    ['treated-open', 'No bandage is needed unless it rubs.', 'No necesita vendaje si no roza.'],
    ['treated-scab', 'A scab may form. Do not pick at it.', 'Puede salir una costra. No la arranque.'],
    [
      'normal-blister-blood',
      'A blister can form, even with blood in it. Do not open it. If it opens, cover it.',
      'Puede salir una ampolla, incluso con sangre. No la abra. Si se abre, cúbrala.',
    ],
    [
      'normal-color',
      'The skin there can stay lighter or darker for a long time.',
      'La piel de esa zona puede quedar más clara o más oscura por mucho tiempo.',
    ],
    ['call-blister', 'A blister is large or hurts a lot.', 'Una ampolla es grande o duele mucho.'],
  ]),
  ...sentences('steroid-injection-pages', 'Q', [
    [
      'normal-steroid',
      'The injected skin can get thin, pale or sunken, for months or for good.',
      'La piel inyectada puede quedar fina, pálida o hundida, por meses o para siempre.',
    ],
  ]),
  ...sentences('common', 'common', [
    [
      'treated-cover',
      'You can take the bandage off the next day.',
      'Puede quitarse el vendaje al día siguiente.',
    ],
    [
      'treated-chemical',
      'Wash off what was put on it at the time we told you. Do not wait longer.',
      'Lave la sustancia que se le aplicó a la hora que le indicamos. No espere más.',
    ],
    [
      'care-no-tape',
      'Tape or sticky dressings can give you a rash. Ask us what to use.',
      'La cinta o los vendajes adhesivos le pueden irritar la piel. Pregunte qué usar.',
    ],
    [
      'care-glue',
      'Keep ointment off skin glue, and do not pick at it. It comes off on its own.',
      'No aplique ungüento sobre el pegamento ni lo arranque. Se cae solo.',
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
      'Los vendajes no se pegan donde hay pelo. Deje la zona sin cubrir y tenga cuidado con el peine y la toalla.',
    ],
    [
      'place-fold',
      'Skin rubs on skin there. Keep it dry, and change a damp dressing at once.',
      'En ese lugar la piel roza con la piel. Manténgala seca y cambie el vendaje si se moja.',
    ],
    [
      'place-uncovered',
      'A bandage does not hold at that place. You can leave it uncovered.',
      'Los vendajes no se pegan en esa zona. Puede dejarla sin cubrir.',
    ],
    [
      'place-wet',
      'The wound is where the skin is moist. Ask us how to clean it, and do not use soap or ointment there.',
      'La herida está en una zona húmeda. Pregunte cómo limpiarla y no use jabón ni ungüento en ella.',
    ],
    [
      'place-mouth',
      'Do not eat or drink hot things until the numb feeling is gone.',
      'No coma ni beba cosas calientes mientras tenga la zona dormida.',
    ],
    [
      'place-lid',
      'Call us at once if you see less well or the eye hurts.',
      'Llámenos de inmediato si ve peor o le duele el ojo.',
    ],
    [
      'mouth-rinse',
      'From the next day on, rinse your mouth gently with warm salt water after meals.',
      'Desde el día siguiente, enjuáguese la boca con agua tibia con sal después de comer.',
    ],
    [
      'mouth-food',
      'Eat soft, cool food for a few days. No hot, sharp or spicy food.',
      'Coma cosas blandas y frescas durante unos días. Nada caliente, duro o picante.',
    ],
    [
      'genital-wash',
      'Rinse with water after you use the toilet, and pat dry. Wear loose cotton underwear.',
      'Enjuague con agua después de ir al baño y seque con toques suaves. Use ropa interior de algodón holgada.',
    ],
    ['genital-sex', 'No sex until it has healed.', 'No tenga relaciones sexuales hasta que sane.'],
    [
      'genital-urine',
      'It can sting when you pass urine. Call us if you cannot pass urine.',
      'Puede arder al orinar. Llámenos si no puede orinar.',
    ],
    [
      'anal-stool',
      'Drink enough and eat fiber, so that stools stay soft. Do not sit for long.',
      'Beba suficiente agua y coma fibra para no estreñirse. No pase mucho tiempo sin levantarse.',
    ],
    [
      'nail-raise',
      'Keep the hand or foot up for a day or two. Do not bump the nail.',
      'Mantenga la mano o el pie en alto durante uno o dos días. No se golpee la uña.',
    ],
    [
      'nail-grows',
      'The nail may come off or grow back slowly and look different. No nail polish until it has healed.',
      'La uña puede caerse o crecer despacio y verse distinta. No use esmalte hasta que sane.',
    ],
    [
      'scalp-wash',
      'When you wash your hair, use a mild shampoo and do not scrub the wound. No hair dye until it has healed.',
      'Al lavarse el pelo, use un champú suave y no frote la herida. No se tiña el pelo hasta que sane.',
    ],
    ['place-eye', 'Keep soap and ointment out of the eye.', 'Evite que le entre jabón o ungüento en el ojo.'],
    [
      'place-waistband',
      'Wear a loose waistband that does not rub there.',
      'Use ropa holgada en la cintura para que no roce.',
    ],
    ['place-strap', 'Keep straps and bags from rubbing there.', 'Evite el roce de tirantes y bolsos.'],
    ['place-collar', 'Wear a soft, loose collar.', 'Use ropa de cuello suave y holgado.'],
    ['place-shoe', 'Wear a loose or open shoe.', 'Use un zapato holgado o abierto.'],
    ['place-seat', 'Do not sit on it for long.', 'No se siente mucho tiempo sobre la herida.'],
    [
      'place-slow',
      'Wounds on the lower leg and foot heal slowly. Put the leg up when you sit.',
      'Las heridas de la parte baja de la pierna y del pie sanan despacio. Cuando se siente, ponga la pierna en alto.',
    ],
    [
      'care-reach',
      'You may not reach this wound by yourself. Ask us who can look after it with you.',
      'Tal vez usted no alcance a cuidar esta herida. Pregunte quién puede ayudarle.',
    ],
    ['normal-title', 'What is normal', 'Qué es normal'],
    ['normal-numb', 'The place may stay numb for a few hours.', 'La zona puede seguir dormida unas horas.'],
    [
      'normal-sore',
      'It may be a little sore, swollen and pink for a few days.',
      'Puede doler un poco, hincharse y ponerse rosada durante unos días.',
    ],
    [
      'normal-ooze',
      'A few spots of blood or clear fluid on the dressing are fine.',
      'Unas gotas de sangre o líquido claro en el vendaje son normales.',
    ],
    [
      'normal-dark',
      'What stopped the bleeding can leave a dark stain for a while.',
      'Lo que se usó para parar la sangre puede dejar una mancha oscura por un tiempo.',
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
      'Cuando sane, cúbrala o use protector solar durante unos meses.',
    ],
    [
      'scar-thick',
      'Call us if the scar gets thick or itchy.',
      'Llámenos si la cicatriz se pone gruesa o le pica.',
    ],
  ]),
];
