import type { plan as english } from '../en/plan';
import type { Translated } from '../translated';

export const plan: Translated<typeof english> = {
  'set.name': '{exercise}, {side, select, left {pierna izquierda} other {pierna derecha}}, serie {number}',
  'set.repetitions': '{count, plural, one {# repetición} other {# repeticiones}}',
  'set.done-of': '{done} de {of}',
  'set.done': '{done}',
  'set.held': '{seconds, plural, one {# segundo} other {# segundos}} en total',
  'set.recorded': 'Grabada',
  'set.not-recorded': 'Sin grabar',
  'set.stopped': 'Paraste antes de que se midiera algo',

  'due.repetitions':
    '{sets, plural, one {{repetitions, plural, one {una vez} other {# veces}}} other {# series de {repetitions}}}, {side, select, left {pierna izquierda} right {pierna derecha} other {cada pierna}}',
  'due.holds':
    '{sets, plural, one {} other {# series de }}{holds, plural, one {# vez} other {# veces}} {seconds, plural, one {# segundo} other {# segundos}}, {side, select, left {pierna izquierda} right {pierna derecha} other {cada pierna}}',
  'dose.repetitions':
    '{sets, plural, one {} other {# series de }}{repetitions, plural, one {# repetición} other {# repeticiones}}, {sides, select, none {pierna por elegir} left {pierna izquierda} right {pierna derecha} left_right {pierna izquierda, después pierna derecha} other {pierna derecha, después pierna izquierda}}',
  'dose.holds':
    '{sets, plural, one {} other {# series de }}{holds, plural, one {# vez} other {# veces}} {seconds, plural, one {# segundo} other {# segundos}}, {sides, select, none {pierna por elegir} left {pierna izquierda} right {pierna derecha} left_right {pierna izquierda, después pierna derecha} other {pierna derecha, después pierna izquierda}}',
  'dose.seat': 'Asiento a {cm} cm de altura.',
  'dose.step': 'Escalón de {cm} cm de altura.',
  'dose.support.none': 'No te agarres a nada; ten algo firme a mano.',
  'dose.support.fingertip': 'Un dedo sobre algo firme.',
  'dose.support.hand': 'Una mano sobre algo firme. No cargues tu peso en ella.',
  'dose.load.loop':
    '{where, select, ankle {Banda cerrada en el tobillo} hand {Banda cerrada en la mano} other {Banda cerrada por encima de las rodillas}}: {level}.',
  'dose.load.tube':
    '{where, select, ankle {Banda tubular en el tobillo} hand {Banda tubular en la mano} other {Banda tubular por encima de las rodillas}}: {level}.',
  'dose.load.weight':
    '{where, select, ankle {Peso en el tobillo} hand {Peso en la mano} other {Peso por encima de las rodillas}}: {level}.',
  'dose.level.light': 'resistencia ligera',
  'dose.level.medium': 'resistencia media',
  'dose.level.strong': 'resistencia fuerte',
  'dose.bend': 'Dobla la rodilla unos {deg}°. Un ángulo recto son 90°.',
  'dose.in-turn': 'Una serie con una pierna y después una con la otra.',
  'dose.rest': '{seconds, plural, one {# segundo} other {# segundos}} de descanso entre medias.',

  'week.times':
    '{count, plural, =1 {Una vez por semana.} =2 {Dos veces por semana.} other {# veces por semana.}}',
  'week.over': 'Hecho por esta semana.',
  'week.none-yet': '{all, plural, =1 {Una vez esta semana.} other {# veces esta semana.}}',
  'week.some': '{done} de {all, plural, other {# veces esta semana.}}',
  'week.more': '{open, plural, =1 {Una vez más.} =2 {Dos veces más.} other {# veces más.}}',

  'wish.none': 'Cuando envíes una sesión, no hace falta ningún video. Cada vez decides tú qué envías.',
  'wish.out-of-line':
    'Cuando envíes una sesión, incluye por favor en video las repeticiones desviadas. Cada vez decides tú qué envías.',
  'wish.without-head':
    'Cuando envíes una sesión, incluye por favor el video sin tu cabeza. Cada vez decides tú qué envías.',
  'wish.whole':
    'Cuando envíes una sesión, incluye por favor el video entero. Cada vez decides tú qué envías.',

  'sheet.title': 'Ejercicios para {patient}',
  'sheet.practice': '¿Preguntas? {practice}',
  'sheet.code': 'Escanea este código con tu teléfono para abrir el plan.',
  'sheet.stop': 'Cuándo parar',
  'sheet.do-not': 'No hagas los ejercicios, y consulta a un profesional, si',
  'sheet.overview': 'Tus ejercicios',
  'sheet.also': 'Además',
  'sheet.diary': 'Marca lo que hiciste y anota tu dolor de 0 a 10',
  'sheet.day': 'Día',
  'sheet.pain': 'Dolor al hacerlo',
  'sheet.pain-next': 'Dolor al día siguiente',
  'sheet.ready': 'Ten esto preparado',
  'sheet.camera': 'Dónde va la cámara',
  'sheet.how': 'Cómo se hace',
  'sheet.review': 'Lo veremos juntos el {day}.',
  'sheet.key':
    '{count, plural, one {Lo que envías de vuelta se abre solo con mi clave. Sus palabras son {words}.} other {Lo que envías de vuelta se abre solo con mi clave y las de mis colegas. Las palabras de cada una: {words}.}} Verás las mismas al abrir el plan y al enviar una sesión. Si no coinciden, pregúntame antes de enviar nada.',
};
