import type { placing as english } from '../en/placing';
import type { Translated } from '../translated';

export const placing: Translated<typeof english> = {
  'placing.camera-low':
    'La cámara está baja o inclinada hacia abajo. Ponla recta, a la altura de tus caderas.',
  'placing.camera-low.short': 'Súbela',
  'placing.camera-high':
    'La cámara está alta o inclinada hacia arriba. Ponla recta, a la altura de tus caderas.',
  'placing.camera-high.short': 'Bájala',
  'placing.camera-height': 'La altura de la cámara es buena.',
  'placing.camera-height.short': 'Buena altura',
  'placing.level-unknown': 'Ponte de pie, recto el cuerpo, para ver si la cámara está nivelada.',
  'placing.level-unknown.short': '¿Nivelada?',
  'placing.level': 'La cámara está nivelada.',
  'placing.level.short': 'Nivelada',
  'placing.tipped':
    'Ponte de pie, recto el cuerpo. Si ya lo estás, la cámara está torcida: levanta un poco el borde que queda a tu {side, select, left {izquierda} other {derecha}}.',
  'placing.tipped.short': 'Nivélala',
  'placing.too-near':
    'Da unos pasos atrás: {halves, plural, =1 {medio metro} =2 {un metro} =3 {un metro y medio} =4 {dos metros} =5 {dos metros y medio} =6 {tres metros} other {{metres} metros}} más o menos.',
  'placing.too-near.short': 'Hacia atrás',
  'placing.too-far':
    'Acércate {halves, plural, =1 {medio metro} =2 {un metro} =3 {un metro y medio} =4 {dos metros} =5 {dos metros y medio} =6 {tres metros} other {{metres} metros}} más o menos.',
  'placing.too-far.short': 'Acércate',
  'placing.distance': 'La distancia es buena.',
  'placing.distance.short': 'Buena distancia',
  'placing.not-smooth': 'La imagen no es lo bastante fluida. Enciende más luz y cierra otras aplicaciones.',
  'placing.keeps-stopping':
    'La imagen se para una y otra vez. Cierra otras aplicaciones de este dispositivo.',
  'placing.keeps-stopping.short': 'Cierra otras apps',
  'placing.smooth': 'La imagen es fluida.',
  'placing.smooth.short': 'Fluida',
  'placing.chair': 'Silla firme',
  'placing.chair.confirmed': 'La silla está firme, como has dicho.',
  'placing.chair.reminder': 'La silla contra la pared y algo firme al alcance.',
  'placing.chair.ask':
    '¿Tiene la silla el respaldo contra una pared, en un suelo seco, de modo que no pueda resbalar? ¿Tienes algo firme a mano para sujetarte?',
  'placing.chair.open': '¿Silla firme?',
  'placing.step': 'Escalón firme',
  'placing.step.confirmed': 'El escalón está firme, como has dicho.',
  'placing.step.reminder': 'El escalón firme, en suelo seco, y algo al lado para sujetarte.',
  'placing.step.ask': '¿Está el escalón firme, en un suelo seco, con algo al lado para sujetarte?',
  'placing.step.open': '¿Escalón firme?',
  'placing.support': 'Apoyo firme',
  'placing.support.confirmed': 'Tienes algo firme a mano para sujetarte, como has dicho.',
  'placing.support.reminder': 'Algo firme al alcance de una mano para sujetarte.',
  'placing.support.ask':
    '¿Tienes algo firme al alcance de una mano: una mesa, una encimera, el respaldo de una silla pesada?',
  'placing.support.open': '¿Apoyo firme?',
  'placing.dark': 'Está demasiado oscuro. Enciende una luz delante de ti.',
  'placing.more-light.short': 'Más luz',
  'placing.bright': 'Hay demasiada luz. Gira la cámara para que no mire a ventanas ni lámparas.',
  'placing.bright.short': 'Menos luz',
  'placing.washed-out': 'La imagen se ve pálida. Limpia la lente y evita que una lámpara le dé de frente.',
  'placing.washed-out.short': 'Limpia la lente',
  'placing.unsteady':
    'Tus articulaciones no se ven con claridad. Pon luz de frente y usa ropa que se distinga de la pared.',
  'placing.light-unknown': 'No se ha comprobado la luz de la imagen.',
  'placing.light-unknown.short': '¿Luz?',
  'placing.light': 'Hay luz suficiente.',
  'placing.light.short': 'Buena luz',
  'placing.middle': 'Estás en el centro.',
  'placing.middle.short': 'En el centro',
  'placing.step-aside': 'Da un paso a tu {side, select, left {izquierda} other {derecha}}.',
  'placing.step-aside.short': '{side, select, left {A la izquierda} other {A la derecha}}',
  'placing.somebody-else': 'Hay otra persona en la imagen. Solo debes estar tú.',
  'placing.somebody-else.short': 'Solo tú',
  'placing.one-person': 'Solo se sigue a una persona.',
  'placing.one-person.short': 'Una persona',
  'placing.turn-round': 'Date la vuelta y mira a la cámara.',
  'placing.turn-round.short': 'Date la vuelta',
  'placing.show-feet':
    'Que se vean los dos pies, con las puntas hacia la cámara. De pie o en la silla, no te muevas.',
  'placing.show-feet.short': 'Muestra los pies',
  'placing.square': 'Estás de frente a la cámara.',
  'placing.square.short': 'De frente',
  'placing.turn-back': 'Lleva hacia atrás el {side, select, left {hombro izquierdo} other {hombro derecho}}.',
  'placing.turn-back-a-little':
    'Lleva un poco hacia atrás el {side, select, left {hombro izquierdo} other {hombro derecho}}.',
  'placing.turn-back.short': '{side, select, left {Gira a la izquierda} other {Gira a la derecha}}',
  'placing.turn-toes':
    'Gira la punta de tu {side, select, left {pie izquierdo} other {pie derecho}} un poco {way, select, inward {hacia dentro} other {hacia fuera}}.',
  'placing.turn-toes.short': '{way, select, inward {Punta adentro} other {Punta afuera}}',
  'placing.stand-up': 'Levántate, para que la cámara te vea como vas a empezar.',
  'placing.stand-up.short': 'Levántate',
  'placing.whole-back': 'Da pasos atrás hasta que se te vea de la cabeza a los pies.',
  'placing.shoes-cut': 'No se ven tus zapatos. Inclina la cámara un poco hacia abajo.',
  'placing.shoes-cut.short': 'Inclínala abajo',
  'placing.head-cut': 'No se ve tu cabeza. Inclina la cámara un poco hacia arriba, o súbela.',
  'placing.head-will-be-cut':
    'Cuando te levantes, no se verá tu cabeza. Inclina la cámara un poco hacia arriba, o súbela.',
  'placing.head-cut.short': 'Inclínala arriba',
  'placing.no-room':
    'Da un paso a tu {side, select, left {izquierda} other {derecha}}: a tu lado no hay sitio suficiente.',
  'placing.stay-in': 'Quédate en la imagen, de la cabeza a los pies.',
  'placing.stay-in.short': 'No salgas',
  'placing.whole-body': 'Se te ve de la cabeza a los pies.',
  'placing.whole-body.short': 'Cuerpo entero',
  'placing.hidden':
    'No se ve bien tu {part, select, left_hip {cadera izquierda} right_hip {cadera derecha} left_knee {rodilla izquierda} right_knee {rodilla derecha} left_ankle {tobillo izquierdo} right_ankle {tobillo derecho} left_foot {pie izquierdo} other {pie derecho}}. Quita lo que haya delante y comprueba que la ropa no lo tapa.',
  'placing.hidden.short':
    '{joint, select, hip {Muestra la cadera} knee {Muestra la rodilla} ankle {Muestra el tobillo} other {Muestra el pie}}',
  'placing.leg-hidden':
    'No se ve bien tu {side, select, left {pierna izquierda} other {pierna derecha}}. Quita lo que haya delante.',
  'placing.leg-hidden.short': 'Muestra la pierna',
  'placing.foot-ahead': 'Pon tu {side, select, left {pie izquierdo} other {pie derecho}} delante del otro.',
  'placing.foot-ahead.short': 'Pie delante',
  'placing.leg': 'Se ven tu {side, select, left {pierna izquierda} other {pierna derecha}} y el pie.',
  'placing.leg.short': 'Pierna a la vista',
  'placing.step-in': 'Ponte donde la cámara te vea de la cabeza a los pies.',
  'placing.step-in.short': 'Entra',

  'stand.still': 'No te muevas durante dos segundos.',
  'stand.unseen':
    'Ponte de modo que se vea tu {part, select, left_shoulder {hombro izquierdo} right_shoulder {hombro derecho} left_hip {cadera izquierda} right_hip {cadera derecha} left_knee {rodilla izquierda} right_knee {rodilla derecha} left_ankle {pie izquierdo} other {pie derecho}}, y no te muevas.',
  'stand.legs-unseen': 'Ponte de modo que se vean tus piernas, y no te muevas.',
  'stand.upright': 'Ponte de pie, recto el cuerpo, con los dos pies en el suelo, y no te muevas.',
  'stand.moved': 'No te muevas durante dos segundos, con los brazos sueltos.',
  'stand.part-moved':
    'No te muevas durante dos segundos, con los brazos sueltos. Se ha movido tu {part, select, left_knee {rodilla izquierda} right_knee {rodilla derecha} left_ankle {pie izquierdo} other {pie derecho}}.',
};
