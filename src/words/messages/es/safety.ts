import type { safety as english } from '../en/safety';
import type { Translated } from '../translated';

export const safety: Translated<typeof english> = {
  'sign.hot-joint': 'tienes fiebre o te sientes mal, o una articulación está caliente, roja e hinchada',
  'sign.hot-joint.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.calf':
    'una pantorrilla se ha hinchado, está caliente o duele, sobre todo después de una operación, o de semanas en cama o con yeso',
  'sign.calf.advice':
    'No hagas ejercicio. Ve hoy al médico. Si te duele el pecho o te falta el aire, llama enseguida al número de emergencias.',
  'sign.no-weight': 'no puedes apoyar el peso en la pierna',
  'sign.no-weight.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.fall-or-blow':
    'te has caído o te has golpeado la rodilla, y pasa una de estas cosas: tienes 55 años o más; te duele al apretar la rótula; te duele al apretar el bulto de hueso por fuera, justo debajo de la rodilla; no puedes doblar la rodilla en ángulo recto; no pudiste dar cuatro pasos justo después, o no puedes ahora',
  'sign.fall-or-blow.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.swollen-after-twist': 'te torciste o te golpeaste la rodilla, y se hinchó en pocas horas',
  'sign.swollen-after-twist.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.straight-leg':
    'no puedes levantar la pierna con la rodilla estirada, o notaste un chasquido y de repente la pierna está débil',
  'sign.straight-leg.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.shape': 'la rodilla tiene otra forma, o está atascada y no se puede estirar',
  'sign.shape.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.cold-foot': 'un pie se ha puesto frío, pálido o azul',
  'sign.cold-foot.advice':
    'No hagas ejercicio. Busca enseguida la ayuda de un médico; llama al número de emergencias.',
  'sign.numbness': 'sientes la pierna o el pie dormidos, con hormigueo o débiles, y antes no',
  'sign.numbness.advice':
    'No hagas ejercicio. Llama hoy a tu terapeuta o a tu médico. Si te cuesta controlar la orina o las heces, llama enseguida al número de emergencias.',
  'sign.night-pain': 'el dolor no cambia con el descanso y te despierta noche tras noche',
  'sign.night-pain.advice': 'No hagas ejercicio. Llama hoy a tu terapeuta o a tu médico.',
  'sign.weight-loss': 'el dolor no para nunca, y pierdes peso sin querer, o has tenido cáncer',
  'sign.weight-loss.advice': 'No hagas ejercicio. Llama hoy a tu terapeuta o a tu médico.',
  'sign.young-limp': 'tienes menos de 18 años, y cojeas, o te duele la cadera, la ingle o el muslo',
  'sign.young-limp.advice':
    'No hagas ejercicio. Ve hoy al médico. Hasta entonces, camina lo menos posible con esa pierna.',
  'sign.wound': 'una herida de la pierna se abre, sangra o supura',
  'sign.wound.advice': 'No hagas ejercicio. Llama hoy a tu terapeuta o a tu médico.',
  'sign.dizzy': 'hoy sientes mareo o falta de equilibrio',
  'sign.dizzy.advice':
    'No hagas ejercicio. Llama hoy a tu terapeuta o a tu médico. Si te duele el pecho o te falta el aire, llama enseguida al número de emergencias.',
  'sign.swollen': 'la rodilla está más hinchada que de costumbre',
  'sign.swollen.advice':
    'No hagas ejercicio hasta que lo haya visto tu terapeuta o tu médico. Llama hoy a uno de los dos.',
  'sign.much-swollen': 'la rodilla está mucho más hinchada que de costumbre',
  'sign.much-swollen.advice': 'No hagas ejercicio. Ve hoy al médico.',
  'sign.gave-way': 'la rodilla te ha fallado',
  'sign.gave-way.advice':
    'No hagas ejercicio hasta que lo haya visto tu terapeuta o tu médico. Llama hoy a uno de los dos.',
  'sign.locked': 'la rodilla se ha bloqueado o se ha quedado atascada',
  'sign.locked.advice':
    'No hagas ejercicio hasta que lo haya visto tu terapeuta o tu médico. Llama hoy a uno de los dos.',
  'sign.fell': 'te has caído, o te has golpeado la rodilla',
  'sign.fell.advice':
    'No hagas ejercicio hasta que lo haya visto tu terapeuta o tu médico. Llama hoy a uno de los dos. Ve hoy al médico si tienes 55 años o más, si te duele al apretar la rótula o el bulto de hueso por fuera, justo debajo de la rodilla, o si no puedes doblar la rodilla en ángulo recto o dar cuatro pasos.',

  'new.ask.swelling': '¿La rodilla más hinchada?',
  'new.less-swollen': 'Menos',
  'new.swollen': 'Más que de costumbre',
  'new.much-swollen': 'Mucho más',
  'new.ask.let-down': '¿Te ha fallado?',
  'new.gave-way': 'Me ha fallado',
  'new.locked': 'Se ha bloqueado o atascado',
  'new.ask.else': '¿Algo más?',
  'new.fell': 'Una caída o un golpe',
  'new.hot-joint': 'Fiebre, o articulación caliente y roja',
  'new.calf': 'Pantorrilla hinchada, caliente o con dolor',
  'new.numbness': 'Pierna dormida, con hormigueo o débil',

  'pain.before': '¿Cuánto te duele la rodilla ahora mismo?',
  'pain.before-both': '¿Cuánto te duelen las rodillas ahora mismo?',
  'pain.during':
    '¿Cuánto te ha dolido la {side, select, left {rodilla izquierda} right {rodilla derecha} other {rodilla}} en esta serie, como máximo?',
  'pain.during-unfilmed': '¿Cuánto te ha dolido la rodilla en los ejercicios, como máximo?',
  'pain.after':
    '¿Cuánto te duele la {side, select, left {rodilla izquierda} right {rodilla derecha} other {rodilla}} ahora, al acabar?',
  'pain.effort': '¿Cuánto esfuerzo te ha costado?',
  'pain.knee': '{side, select, left {Rodilla izquierda} other {Rodilla derecha}}',
  'pain.none': 'sin dolor',
  'pain.little': 'un poco de dolor',
  'pain.some': 'algo de dolor',
  'pain.strong': 'dolor fuerte',
  'pain.worst': 'el peor dolor que puedas imaginar',
  'effort.none': 'ningún esfuerzo',
  'effort.light': 'ligero',
  'effort.medium': 'medio',
  'effort.hard': 'duro',
  'effort.most': 'todo lo que puedo',

  'caution.no-plan':
    'Descansa, y pregunta a tu terapeuta o a tu médico antes de seguir. Solo ellos pueden decir cuánto dolor es aceptable para ti.',
  'caution.gives-way': 'No vuelvas a hacer ejercicio hasta que lo haya visto tu terapeuta o tu médico.',
  'caution.pain':
    '{limit, plural, =0 {Para en cuanto te duela.} other {Para si el dolor pasa de # sobre 10.}}',
  'caution.stop-gives-way': 'Para si la rodilla te falla.',
  'caution.stop-locks': 'Para si la rodilla se bloquea o se atasca.',
  'caution.stop-swells':
    'Para si la rodilla se hincha, y no sigas hasta que la haya visto tu terapeuta o tu médico.',
  'caution.stop-dizzy': 'Para si sientes mareo o te falta equilibrio, y siéntate.',
  'caution.defer':
    'Lo que te han dicho tu terapeuta o tu médico va por delante de lo que se dice aquí. Este programa mide si la rodilla está sobre el pie; no te hace ningún examen.',
  'caution.therapist-says': 'Tu terapeuta dice: {words}',
  'caution.first-beyond-limit':
    'Para por hoy, descansa la pierna y habla conmigo antes de la próxima sesión.',
  'caution.first-gives-way': 'Para por hoy, y habla conmigo antes de la próxima sesión.',
  'pain.too-much.before': 'Ahora te duele {score} sobre 10, más de {limit}. No hagas ejercicio hoy.',
  'pain.too-much.during': 'En esta serie te ha dolido {score} sobre 10, más de {limit}. Para por hoy.',
  'pain.too-much.after': 'Ahora te duele {score} sobre 10, más de {limit}. Ha sido demasiado por hoy.',

  'concern.gave-way': 'Te falló la rodilla.',
  'concern.locked': 'La rodilla se bloqueó o se quedó atascada.',
  'concern.dizzy': 'Sentiste mareo o falta de equilibrio.',
  'concern.fell': 'Te caíste.',
  'concern.fell.doctor':
    'Ve hoy al médico si tienes 55 años o más. Ve también si te duele al apretar la rótula o el bulto de hueso por fuera, justo debajo de la rodilla. Lo mismo si no puedes doblar la rodilla en ángulo recto o dar cuatro pasos.',
  'concern.stopped-pain': 'Paraste por el dolor.',
  'concern.pain': 'Te dolió {score} sobre 10.',

  'rules.after-pain': 'Qué hacer si ha dolido:',
  'rules.gave-way': 'Si la rodilla ha fallado, se ha bloqueado o se ha atascado:',
  'rules.afterwards': 'Qué hacer entonces',
};
