import type { result as english } from '../en/result';
import type { Translated } from '../translated';

export const result: Translated<typeof english> = {
  'verdict.in': 'alineada',
  'verdict.probably-in': 'probablemente alineada',
  'verdict.cant-tell': 'no se puede saber',
  'verdict.probably-out': 'probablemente desviada',
  'verdict.out': 'desviada',
  'verdict.not-measured': 'no medida',
  'verdict.counted': '{count} {verdict}',

  'reason.no-person': 'no se ve a nadie',
  'reason.no-person.advice': 'Ponte de modo que se te vea todo el cuerpo, con luz de frente.',
  'reason.joint-unseen': 'cadera, rodilla o tobillo tapados',
  'reason.joint-unseen.advice':
    'Quita lo que haya delante de las piernas, usa ropa que deje ver las rodillas y pon más luz.',
  'reason.out-of-picture': 'la pierna se sale de la imagen',
  'reason.out-of-picture.advice':
    'Aleja o inclina la cámara para que las caderas, las rodillas y los pies se vean siempre.',
  'reason.tracking-jumped': 'se siguió a otra persona',
  'reason.tracking-jumped.advice': 'Graba con una sola persona en la imagen.',
  'reason.frames-missing': 'faltan imágenes',
  'reason.frames-missing.advice': 'Vuelve a grabar con más luz y sin nada más abierto en el dispositivo.',
  'reason.thigh-foreshortened': 'el muslo apunta a la cámara',
  'reason.thigh-foreshortened.advice':
    'No hay nada que cambiar: el ángulo solo cuenta cuando el muslo se ve lo bastante largo.',
  'reason.view-turned': 'cuerpo demasiado girado',
  'reason.view-turned.advice':
    'Gira el cuerpo, o mueve la cámara, hasta que las caderas y los pies queden de frente.',
  'reason.band-too-wide': 'demasiado incierto desde aquí',
  'reason.band-too-wide.advice':
    'Ponte de frente a la cámara, con los dos pies en la imagen, y empieza con dos flexiones suaves con las dos piernas: muestran tu posición ante la cámara.',
  'reason.no-stance': 'sin los dos pies en el suelo',
  'reason.no-stance.advice':
    'No hay nada que cambiar: el lugar de las caderas entre los pies solo cuenta con los dos pies separados en el suelo.',

  'told.took-time': 'Te has tomado tu tiempo para hacer ejercicio.',
  'told.none-seen':
    'No se vio ninguna repetición, así que no se puede decir nada de esta serie. La próxima vez muévete despacio, con el movimiento completo.',
  'told.unseen':
    'La cámara no pudo ver cómo se movía tu rodilla, así que esta vez no se puede decir nada de ella.',
  'told.did': 'Has hecho {count, plural, one {# repetición} other {# repeticiones}}.',
  'told.did-all': 'Has hecho {count, plural, one {la única repetición} other {las # repeticiones}}.',
  'told.over-foot': 'En {which} la rodilla se quedó sobre el pie.',
  'told.within': 'En {which} te quedaste dentro de todos los límites.',
  'told.other-leg':
    'Parece que trabajó la otra pierna; entonces nada de esto se refiere a la pierna prevista.',
  'told.too-close': 'En {which} hay tan poca diferencia que no se puede saber.',
  'told.keep-going': 'Sigue así: despacio, y con la rodilla sobre el centro del pie.',
  'told.both-ways':
    'La rodilla se fue unas veces hacia dentro y otras hacia fuera. Ve despacio y mantenla sobre el centro del pie.',
  'told.inward':
    'En {which} la rodilla se fue hacia dentro, hacia la otra rodilla. Llévala un poco hacia fuera, sobre el centro del pie.',
  'told.outward':
    'En {which} la rodilla se fue hacia fuera, lejos de la otra rodilla. Llévala un poco hacia dentro, sobre el centro del pie.',
  'told.unmeasured':
    'No se pudo medir: {left} de {count, plural, one {# repetición} other {# repeticiones}}.',
  'told.unmeasured-because':
    'No se pudo medir: {left} de {count, plural, one {# repetición} other {# repeticiones}}. Motivo: {reason}.',

  'which.some': '{count} de {of, plural, one {# repetición} other {# repeticiones}}',
  'which.all':
    '{of, plural, =1 {la única repetición que se midió} =2 {las dos repeticiones} other {las # repeticiones}}',
  'which.about': 'unas {count} de {of, plural, one {# repetición} other {# repeticiones}}',
  'which.place':
    'la {place, selectordinal, =1 {primera} =2 {segunda} =3 {tercera} =4 {cuarta} =5 {quinta} =6 {sexta} =7 {séptima} =8 {octava} =9 {novena} =10 {décima} other {#.ª}}',
  'which.repetition': '{places} repetición',

  'habit.knee-angle.least': 'En {which} la rodilla se fue hacia fuera, lejos de la otra rodilla.',
  'habit.knee-angle.most': 'En {which} la rodilla se fue hacia dentro, hacia la otra rodilla.',
  'habit.knee-off-line.least': 'En {which} la rodilla se fue hacia fuera, lejos de la otra rodilla.',
  'habit.knee-off-line.most': 'En {which} la rodilla se fue hacia dentro, hacia la otra rodilla.',
  'habit.knee-over-foot.least': 'En {which} la rodilla se fue hacia fuera, lejos de la otra rodilla.',
  'habit.knee-over-foot.most': 'En {which} la rodilla se fue hacia dentro, hacia la otra rodilla.',
  'habit.hip-over-knee.least': 'En {which} la cadera no estaba sobre la rodilla.',
  'habit.hip-over-knee.most': 'En {which} la cadera no estaba sobre la rodilla.',
  'habit.pelvic-drop.least': 'En {which} subió la cadera de la pierna libre.',
  'habit.pelvic-drop.most': 'En {which} bajó la cadera de la pierna libre.',
  'habit.trunk-lean.least': 'En {which} el tronco se inclinó hacia un lado.',
  'habit.trunk-lean.most': 'En {which} el tronco se inclinó hacia un lado.',
  'habit.pelvis-place.least': 'En {which} las caderas se quedaron lejos del pie que trabaja.',
  'habit.pelvis-place.most': 'En {which} las caderas pasaron mucho sobre el pie que trabaja.',
  'habit.depth.least': 'En {which} bajaste menos de lo previsto.',
  'habit.depth.most': 'En {which} bajaste más de lo previsto.',

  'cue.knee-angle.least': 'Lleva la rodilla hacia dentro, sobre el segundo dedo.',
  'cue.knee-angle.most': 'La rodilla sobre el centro del pie.',
  'cue.knee-off-line.least': 'Lleva la rodilla hacia dentro, sobre el segundo dedo.',
  'cue.knee-off-line.most': 'La rodilla sobre el centro del pie.',
  'cue.knee-over-foot.least': 'Lleva la rodilla hacia dentro, sobre el segundo dedo.',
  'cue.knee-over-foot.most': 'La rodilla sobre el centro del pie.',
  'cue.hip-over-knee.least': 'Cadera atrás, sobre la rodilla.',
  'cue.hip-over-knee.most': 'Cadera atrás, sobre la rodilla.',
  'cue.pelvic-drop.least': 'Cinturón recto.',
  'cue.pelvic-drop.most': 'Cinturón recto, la cadera sobre la rodilla.',
  'cue.trunk-lean.least': 'El pecho sobre la hebilla del cinturón.',
  'cue.trunk-lean.most': 'El pecho sobre la hebilla del cinturón.',
  'cue.pelvis-place.least': 'Las caderas sobre el pie que trabaja.',
  'cue.pelvis-place.most': 'Las caderas entre los pies.',
  'cue.depth.least': 'Un poco más abajo, mientras no duela.',
  'cue.depth.most': 'No tan abajo.',
  'short-cue.knee-angle.least': 'Al medio',
  'short-cue.knee-angle.most': 'Más fuera',
  'short-cue.knee-off-line.least': 'Al medio',
  'short-cue.knee-off-line.most': 'Más fuera',
  'short-cue.knee-over-foot.least': 'Al medio',
  'short-cue.knee-over-foot.most': 'Más fuera',
  'short-cue.hip-over-knee.least': 'Más atrás',
  'short-cue.hip-over-knee.most': 'Más atrás',
  'short-cue.pelvic-drop.least': 'A nivel',
  'short-cue.pelvic-drop.most': 'A nivel',
  'short-cue.trunk-lean.least': 'Más recto',
  'short-cue.trunk-lean.most': 'Más recto',
  'short-cue.pelvis-place.least': 'Más cerca',
  'short-cue.pelvis-place.most': 'No tanto',
  'short-cue.depth.least': 'Más abajo',
  'short-cue.depth.most': 'Muy abajo',
  'change.since-last':
    'La {side, select, left {rodilla izquierda} other {rodilla derecha}} fue {change, select, less {menos hacia} other {más hacia}} dentro que la última vez, el {day}.',

  'heard.good': 'Bien',

  'replay.best': 'Tu mejor',
  'replay.practise': 'Para practicar',
  'replay.nearest': 'La más justa',
  'replay.stayed': 'En {which} te quedaste en el carril.',
  'replay.closest': 'En {which} fue cuando más cerca estuviste de quedarte en el carril.',
  'replay.edge-stayed': '{which} fue la que más se acercó al borde, y se quedó en el carril.',
  'replay.edge':
    '{which} fue la que más se acercó al borde. Hay tan poca diferencia que no se puede decir más.',
};
