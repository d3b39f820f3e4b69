import type { spoken as english } from '../en/spoken';
import type { Translated } from '../translated';

export const spoken: Translated<typeof english> = {
  'say.stay-placed': 'Vuelve a tu sitio.',
  'say.good': 'Bien.',
  'say.bends': 'Dos flexiones suaves con las dos piernas, pequeñas y lentas.',
  'say.standing': 'Ahora no te muevas, con los dos pies en el suelo.',
  'say.less-exact': 'Seguimos. La medida será menos exacta.',
  'say.maybe-unmeasured': 'Seguimos. Puede que una parte no se mida.',
  'say.placed-again': 'Bien. Seguimos.',
  'say.go': 'Ya.',
  'say.uncounted':
    'Por favor, cuenta tú las repeticiones. Cuando acabes, vuelve y toca «Terminar esta serie».',
  'say.idle': 'Sigue cuando quieras. Para terminar la serie, vuelve y toca «Terminar esta serie».',
  'say.set-done': 'Serie hecha. Muy bien.',
  'say.set-ended': 'Esta serie ha terminado.',
  'say.all-done': 'Eso era todo. Muy bien.',
  'say.last-seconds': 'Quedan diez segundos.',
  'say.hold': 'Aguanta.',
  'say.halfway': 'Vas por la mitad.',
  'say.release': 'Y suelta.',
  'say.why-stop': 'Hemos parado. Sujétate a algo o siéntate. Después elige el motivo en la pantalla.',
  'say.dizzy':
    'Hemos parado. Siéntate, y no te levantes hasta que se te pase. Llama hoy a tu terapeuta o a tu médico. Si te duele el pecho o te falta el aire, llama enseguida al número de emergencias.',
  'say.ask-pain': 'Ven a la pantalla y elige cuánto te ha dolido.',
  'say.pain-first': 'Antes de la siguiente serie, elige en la pantalla cuánto te ha dolido.',
  'say.camera-missing': 'La cámara todavía no está encendida.',
  'say.ended': 'Terminado. Lo que has hecho hasta ahora está guardado.',
  'say.stopped-because': 'Hemos parado. Sujétate a algo o siéntate. {advice}',

  'say.paused.left-picture': 'En pausa: has salido de la imagen. Vuelve para seguir.',
  'say.paused.no-pictures': 'En pausa: la cámara no da imagen. Quédate donde estás.',
  'say.paused.not-followed': 'En pausa un momento. Quédate donde estás.',
  'say.paused.turned': 'En pausa: la imagen ha girado. Vuelve a ponerla como estaba.',
  'say.paused.button': 'En pausa.',
  'say.paused.page-hidden': 'En pausa. Toca Continuar cuando quieras seguir.',
  'say.paused.camera-ended': 'En pausa: la cámara se ha parado. Lo que has hecho hasta ahora está guardado.',

  'say.number': '{number}.',
  'say.set':
    '{ofSets, plural, one {} other {Serie {number} de {ofSetsSaid}: }}{exercise}, {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'say.repetitions': '{count, plural, one {{repetitions} repetición} other {{repetitions} repeticiones}}.',
  'say.holds':
    '{count, plural, one {{holds} vez} other {{holds} veces}}, {seconds, plural, one {{secondsSaid} segundo} other {{secondsSaid} segundos}} cada vez.',
  'say.rest': 'Descansa {seconds, plural, one {{secondsSaid} segundo} other {{secondsSaid} segundos}}.',
  'say.then':
    '{change, select, side {Después cambia de pierna} item {Lo siguiente} other {Después}}: {ofSets, plural, one {} other {serie {number} de {ofSetsSaid}: }}{exercise}, {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'say.rule':
    '{limit, plural, =0 {Si te duele} other {Si te duele más de {limitSaid} sobre diez}}, para y siéntate.',
  'say.rule-filmed': 'Si sales de la imagen, se pone en pausa.',
  'say.more': '{left, plural, =0 {Esa era la última.} one {Una más.} other {{leftSaid} más.}}',
  'say.guide-out': 'Lleva la rodilla un poco hacia fuera, sobre el pie.',
  'say.guide-in': 'Lleva la rodilla un poco hacia dentro, sobre el pie.',
  'say.over-foot': 'La rodilla sobre el pie, bien.',
  'caption.count': '{count} de {of}.',

  'tempo.rise':
    'Sube en {up, plural, one {# segundo} other {# segundos}}, {stay, plural, =0 {} one {quédate # segundo, } other {quédate # segundos, }}baja en {down, plural, one {# segundo} other {# segundos}}.',
  'tempo.dip':
    'Baja en {down, plural, one {# segundo} other {# segundos}}, {stay, plural, =0 {} one {quédate # segundo, } other {quédate # segundos, }}sube en {up, plural, one {# segundo} other {# segundos}}.',
  'tempo.reach':
    'Abre en {down, plural, one {# segundo} other {# segundos}}, {stay, plural, =0 {} one {quédate # segundo, } other {quédate # segundos, }}vuelve en {up, plural, one {# segundo} other {# segundos}}.',
};
