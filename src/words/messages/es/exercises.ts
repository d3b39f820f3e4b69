import type { exercises as english } from '../en/exercises';
import type { Translated } from '../translated';

export const exercises: Translated<typeof english> = {
  'exercise.split-stance-sit-to-stand.name': 'Levantarse de la silla con un pie delante',
  'exercise.split-stance-sit-to-stand.side-hint': 'La pierna que trabaja es la del pie de delante.',
  'exercise.split-stance-sit-to-stand.setup':
    'La silla va con el respaldo contra la pared y de frente a la cámara.\nSiéntate en la mitad delantera, con los dos pies en el suelo.\nPon delante {side, select, left {el pie izquierdo, y el pie derecho} other {el pie derecho, y el pie izquierdo}} un poco más atrás.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.split-stance-sit-to-stand.start':
    'Siéntate, con el {side, select, left {pie izquierdo} other {pie derecho}} delante.',
  'exercise.split-stance-sit-to-stand.steps':
    'Lleva el peso sobre el {side, select, left {pie izquierdo: la rodilla izquierda} other {pie derecho: la rodilla derecha}} va hacia delante, sobre los dedos, y el pecho sigue alto.\nEmpuja con el {side, select, left {talón izquierdo y levántate; la pierna derecha} other {talón derecho y levántate; la pierna izquierda}} ayuda solo lo necesario.\nQuédate de pie un momento, con el cuerpo recto.\nSiéntate despacio: la cadera va hacia atrás y la rodilla otra vez hacia delante, hasta tocar el asiento.',
  'exercise.split-stance-sit-to-stand.cautions':
    'La silla debe estar contra la pared: cada vez que te sientas, la empujas hacia atrás.',

  'exercise.single-leg-sit-to-stand.name': 'Levantarse de la silla con una pierna',
  'exercise.single-leg-sit-to-stand.side-hint':
    'La pierna que trabaja es la del pie que se queda en el suelo.',
  'exercise.single-leg-sit-to-stand.setup':
    'La silla va con el respaldo contra la pared y de frente a la cámara.\nSiéntate en la mitad delantera, con los dos pies en el suelo.\nLevanta un poco del suelo el {side, select, left {pie derecho} other {pie izquierdo}}; vuelve a apoyarlo siempre que lo necesites.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.single-leg-sit-to-stand.start':
    'Siéntate y prepárate sobre la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.single-leg-sit-to-stand.steps':
    'Lleva la {side, select, left {rodilla izquierda} other {rodilla derecha}} hacia delante, sobre los dedos, con el pecho alto, y levántate con esa pierna.\nQuédate de pie un momento; el {side, select, left {pie derecho} other {pie izquierdo}} puede tocar el suelo.\nSiéntate despacio con la {side, select, left {pierna izquierda} other {pierna derecha}}: la cadera va hacia atrás y la rodilla otra vez hacia delante.',
  'exercise.single-leg-sit-to-stand.cautions':
    'La silla debe estar contra la pared: cada vez que te sientas, la empujas hacia atrás.\nApoya el otro pie siempre que te falte equilibrio.',

  'exercise.single-leg-squat.name': 'Sentadilla con una pierna',
  'exercise.single-leg-squat.side-hint': 'La pierna que trabaja es la de apoyo.',
  'exercise.single-leg-squat.setup':
    'Ponte con tu apoyo para la mano al lado, no delante.\nPonte sobre la {side, select, left {pierna izquierda y dobla la rodilla derecha} other {pierna derecha y dobla la rodilla izquierda}} para que el pie quede detrás de ti.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.single-leg-squat.start':
    'Ponte sobre la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.single-leg-squat.steps':
    'Ponte de pie, con el cuerpo recto.\nLleva la cadera hacia atrás y dobla la {side, select, left {rodilla izquierda} other {rodilla derecha}}, solo mientras siga sobre el pie y no duela.\nEmpuja con el talón y estírate.',
  'exercise.single-leg-squat.cautions': 'Apoya el otro pie siempre que te falte equilibrio.',

  'exercise.sliding-leg-squat.name': 'Sentadilla con una pierna que se desliza',
  'exercise.sliding-leg-squat.side-hint': 'La pierna que trabaja es la que no se mueve; la otra se desliza.',
  'exercise.sliding-leg-squat.setup':
    'Ponte con tu apoyo para la mano al lado, no delante.\nDeja quieto el {side, select, left {pie izquierdo; el pie derecho} other {pie derecho; el pie izquierdo}} va sobre el paño y se desliza.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.sliding-leg-squat.start':
    'Pon el peso sobre la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.sliding-leg-squat.steps':
    'Pon el peso sobre la {side, select, left {pierna izquierda} other {pierna derecha}}.\nLleva la cadera hacia atrás, dobla la {side, select, left {rodilla izquierda y deja que el pie derecho} other {rodilla derecha y deja que el pie izquierdo}} se deslice hacia el lado.\nPara antes de que la {side, select, left {rodilla izquierda} other {rodilla derecha}} se salga del centro del pie.\nEmpuja hacia arriba con el {side, select, left {talón izquierdo; el pie derecho} other {talón derecho; el pie izquierdo}} solo lo sigue. No tires de él.',
  'exercise.sliding-leg-squat.cautions':
    'El pie de apoyo no debe resbalar: debajo de él, suelo limpio o una suela firme; el paño va solo bajo el otro pie.',

  'exercise.lateral-step-down.name': 'Bajar de un escalón de lado',
  'exercise.lateral-step-down.side-hint': 'La pierna que trabaja es la que está en el escalón.',
  'exercise.lateral-step-down.setup':
    'Pon el escalón donde puedas sujetarte a algo que esté al lado.\nPon el {side, select, left {pie izquierdo en el escalón, cerca del borde, y deja colgar al lado el pie derecho} other {pie derecho en el escalón, cerca del borde, y deja colgar al lado el pie izquierdo}}.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.lateral-step-down.start':
    'Súbete al escalón con la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.lateral-step-down.steps':
    'Dobla la {side, select, left {rodilla izquierda hasta que el talón derecho} other {rodilla derecha hasta que el talón izquierdo}} casi toque el suelo.\nEstira la {side, select, left {rodilla izquierda; no te empujes con el pie derecho} other {rodilla derecha; no te empujes con el pie izquierdo}}.',
  'exercise.lateral-step-down.cautions':
    'El escalón no debe volcar ni resbalar. Sujétate a algo hasta que te sientas con seguridad.',

  'exercise.hip-abduction-on-bent-leg.name': 'Abrir una pierna con la otra un poco doblada',
  'exercise.hip-abduction-on-bent-leg.side-hint':
    'La pierna que trabaja es la de apoyo, un poco doblada; la otra se abre hacia el lado.',
  'exercise.hip-abduction-on-bent-leg.setup':
    'Ponte con tu apoyo para la mano en tu {side, select, left {lado izquierdo} other {lado derecho}}, al alcance.\nPonte sobre la {side, select, left {pierna izquierda con la rodilla un poco doblada; la pierna derecha} other {pierna derecha con la rodilla un poco doblada; la pierna izquierda}} se abrirá hacia el lado.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.hip-abduction-on-bent-leg.start':
    'Ponte sobre la {side, select, left {pierna izquierda} other {pierna derecha}}, con la rodilla un poco doblada.',
  'exercise.hip-abduction-on-bent-leg.steps':
    'Mantén siempre un poco doblada la {side, select, left {rodilla izquierda} other {rodilla derecha}}.\nAbre la {side, select, left {pierna derecha} other {pierna izquierda}} hacia el lado y un poco hacia atrás, con la punta del pie hacia delante.\nVuelve a juntarla sin impulso.',
  'exercise.hip-abduction-on-bent-leg.cautions': 'Apoya el otro pie siempre que te falte equilibrio.',

  'exercise.two-legged-bend.name': 'Flexión con las dos piernas',
  'exercise.two-legged-bend.side-hint': 'Trabajan las dos piernas; el lado dice qué rodilla se valora.',
  'exercise.two-legged-bend.setup':
    'Ponte sobre los dos pies, separados como las caderas, con tu apoyo para la mano al lado.\nPonte de frente a la cámara: las dos caderas y los dos hombros a la misma distancia.',
  'exercise.two-legged-bend.start': 'Ponte de pie, sobre los dos pies.',
  'exercise.two-legged-bend.steps':
    'Ponte sobre los dos pies, separados como las caderas, con las puntas un poco hacia fuera.\nDobla las dos rodillas, cada una sobre el centro de su pie, sin levantar los talones.\nEstírate.',
  'exercise.two-legged-bend.cautions': '',

  'exercise.quad-press-hold.name': 'Apretar el muslo y aguantar',
  'exercise.quad-press-hold.setup':
    'Ponte en la posición que te enseñaron, con la pelota detrás del {side, select, left {muslo izquierdo} other {muslo derecho}}.\nEn el suelo también vale un rollo bajo el muslo. De pie, la pelota va entre la parte de atrás del muslo y una pared.',
  'exercise.quad-press-hold.start':
    'Ponte en posición, con la pelota detrás del {side, select, left {muslo izquierdo} other {muslo derecho}}.',
  'exercise.quad-press-hold.steps':
    'Aprieta el {side, select, left {muslo izquierdo} other {muslo derecho}} hacia atrás contra la pelota, y el talón hacia abajo.\nTensa el músculo de encima de la rodilla, tan fuerte como puedas sin dolor.\nSigue respirando; aguanta hasta que acabe el tiempo.\nSuelta despacio.',
  'exercise.quad-press-hold.cautions':
    'La rodilla no debe doler mientras aprietas: aprieta menos, o para.\nNo aguantes la respiración: sube la tensión.',

  'exercise.bridge-hold.name': 'Puente, aguantar',
  'exercise.bridge-hold.setup':
    'Túmbate boca arriba con las rodillas dobladas y los dos pies apoyados.\nPon casi todo el peso en el {side, select, left {pie izquierdo} other {pie derecho}}, como te enseñaron.',
  'exercise.bridge-hold.start':
    'Túmbate, con casi todo el peso en el {side, select, left {pie izquierdo} other {pie derecho}}.',
  'exercise.bridge-hold.steps':
    'Empuja con el {side, select, left {talón izquierdo} other {talón derecho}} y levanta la cadera.\nMantén los dos lados de la cadera a la misma altura y las costillas abajo.\nSigue respirando; aguanta hasta que acabe el tiempo.\nBaja la cadera despacio.',
  'exercise.bridge-hold.cautions': 'Para si te duele la espalda o te da un calambre detrás del muslo.',

  'exercise.single-leg-stance-hold.name': 'De pie sobre una pierna, aguantar',
  'exercise.single-leg-stance-hold.setup': 'Ponte con tu apoyo para la mano al lado, no delante.',
  'exercise.single-leg-stance-hold.start':
    'Ponte sobre la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.single-leg-stance-hold.steps':
    'Ponte sobre la {side, select, left {pierna izquierda y levanta el pie derecho} other {pierna derecha y levanta el pie izquierdo}}.\nDeja la {side, select, left {rodilla izquierda} other {rodilla derecha}} un poco suelta y la cintura nivelada.\nAguanta hasta que acabe el tiempo.',
  'exercise.single-leg-stance-hold.cautions': 'Apoya el otro pie siempre que te falte equilibrio.',

  'exercise.wall-sit-hold.name': 'Sentarse contra la pared, aguantar',
  'exercise.wall-sit-hold.setup':
    'Apoya la espalda en la pared, con los pies a un paso de ella, separados como las caderas.\nPon más peso en la {side, select, left {pierna izquierda} other {pierna derecha}}, como te enseñaron.',
  'exercise.wall-sit-hold.start':
    'Apóyate en la pared, con más peso en la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.wall-sit-hold.steps':
    'Baja por la pared hasta donde te enseñaron y sin dolor.\nMantén la {side, select, left {rodilla izquierda} other {rodilla derecha}} sobre el centro del pie.\nSigue respirando; aguanta hasta que acabe el tiempo.\nEmpuja hacia arriba con los talones.',
  'exercise.wall-sit-hold.cautions':
    'El suelo delante de la pared no debe resbalar.\nNo aguantes la respiración: sube la tensión.',

  'exercise.side-bridge-hold.name': 'Puente de lado, aguantar',
  'exercise.side-bridge-hold.setup':
    'Túmbate sobre el {side, select, left {lado izquierdo} other {lado derecho}}, en algo blando.\nPon el codo debajo del hombro, y el antebrazo hacia delante.\nDobla las rodillas, o deja las piernas rectas, como te enseñaron.',
  'exercise.side-bridge-hold.start':
    'Túmbate sobre el {side, select, left {lado izquierdo} other {lado derecho}}.',
  'exercise.side-bridge-hold.steps':
    'Empuja el suelo con el antebrazo y levanta la cadera.\nHaz una línea recta de la cabeza a la {side, select, left {rodilla izquierda o el pie} other {rodilla derecha o el pie}}.\nSigue respirando; aguanta hasta que acabe el tiempo.\nBaja la cadera despacio.',
  'exercise.side-bridge-hold.cautions':
    'Para si te duele el hombro, la espalda o la rodilla.\nNo aguantes la respiración: sube la tensión.',

  'exercise.felt.thigh':
    'Debes notarlo delante, en el {side, select, left {muslo izquierdo} other {muslo derecho}}, no en el lado de fuera de la rodilla.',
  'exercise.felt.buttock':
    'Debes notarlo en el {side, select, left {glúteo izquierdo} other {glúteo derecho}}, no en el lado de fuera de la rodilla.',
  'exercise.felt.thigh-and-buttock':
    'Debes notarlo en el {side, select, left {muslo y el glúteo izquierdos} other {muslo y el glúteo derechos}}, no en el lado de fuera de la rodilla.',
  'exercise.felt.side-of-trunk':
    'Debes notarlo en el {side, select, left {lado izquierdo del cuerpo y de la cadera} other {lado derecho del cuerpo y de la cadera}}, no en el hombro.',

  'exercise.camera':
    'Pon la cámara a dos o tres metros delante de ti, recta y nivelada, a la altura de tus caderas o un poco más abajo. Tienen que verse los dos pies y la cabeza.',
  'exercise.then-other':
    'Después, lo mismo con la {side, select, left {pierna izquierda} other {pierna derecha}}.',
  'exercise.step-by-step': 'Cómo se hace, paso a paso',

  'figure.front': 'de frente, {moment}',
  'figure.side': 'de lado, {moment}',
  'figure.oblique': 'de frente y en diagonal, {moment}',
  'figure.rise.start': 'en la silla',
  'figure.rise.end': 'de pie',
  'figure.dip.start': 'de pie',
  'figure.dip.end': 'abajo',
  'figure.reach.start': 'al empezar',
  'figure.reach.end': 'pierna abierta',
  'figure.hold.start': 'antes',
  'figure.hold.end': 'al aguantar',

  'need.clear-floor': 'Suelo libre y seco',
  'need.clear-floor.sentence':
    'Deja libre el suelo a dos pasos a tu alrededor. Debe estar seco, sin alfombras sueltas ni cables.',
  'need.support': 'Algo para sujetarte',
  'need.support.sentence':
    'Ten algo firme al alcance de una mano: una mesa, una encimera, el respaldo de una silla pesada. Es para el equilibrio; no cargues tu peso en él.',
  'need.chair': 'Silla contra la pared',
  'need.chair.sentence':
    'Usa una silla firme, sin ruedas, y apoya el respaldo en una pared para que no resbale.',
  'need.step': 'Escalón bajo y firme',
  'need.step.sentence':
    'Usa un escalón bajo y firme, que no pueda volcar ni resbalar, tan alto como te enseñaron.',
  'need.slide': 'Algo que se deslice',
  'need.slide.sentence':
    'Pon un paño doblado bajo el pie que se mueve, en un suelo liso. El otro pie no debe resbalar.',
  'need.ball': 'Pelota pequeña y blanda',
  'need.ball.sentence': 'Usa la pelota o la toalla enrollada que te enseñaron.',
  'need.wall': 'Pared libre',
  'need.wall.sentence': 'Busca una pared lisa y sin nada, con suelo seco delante que agarre.',
  'need.loop': 'Banda cerrada',
  'need.loop.sentence':
    'Mira cada vez si la banda tiene cortes, y para si se rompe. No uses látex si te da alergia.',
  'need.tube': 'Banda tubular y anclaje',
  'need.tube.sentence':
    'Fija la banda abajo, a algo que no se mueva, y pruébala con un tirón. No mires hacia una banda estirada. Para si se rompe. No uses látex si te da alergia.',
  'need.weight': 'Peso',
  'need.weight.sentence': 'Usa un peso que puedas sujetar bien. Déjalo cuando se te canse la mano.',
  'need.shoes': 'Zapatos',
  'need.shoes.sentence': 'Usa zapatos firmes, con suela que agarre, como dice tu plan.',
  'need.bare-feet': 'Pies descalzos',
  'need.bare-feet.sentence': 'Quítate los zapatos y los calcetines, como dice tu plan.',
  'need.either': 'Zapatos o pies descalzos',
  'need.either.sentence':
    'Usa zapatos firmes o ve sin zapatos ni calcetines. Solo con calcetines se resbala.',
  'need.clothes': 'Rodillas a la vista',
  'need.clothes.sentence':
    'Usa ropa que deje ver la forma de las rodillas y que acabe por encima de los zapatos.',
};
