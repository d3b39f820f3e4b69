import type { sending as english } from '../en/sending';
import type { Translated } from '../translated';

export const sending: Translated<typeof english> = {
  'send.title': 'Envíala a tu terapeuta',
  'send.sent': 'Enviado',
  'send.saved': 'Guardado como archivo',
  'send.done': 'Hecho',
  'send.once-more': 'Enviar otra vez',
  'send.send': 'Enviar',
  'send.sealing': 'Cerrando el sobre …',
  'send.not-now': 'Ahora no',
  'send.only-therapist': 'Solo tu terapeuta puede abrirlo. Siempre muestra cómo se movió tu rodilla.',
  'send.only-therapist-answer':
    'Solo tu terapeuta puede abrirlo. Contiene lo que has hecho y lo que has dicho.',
  'send.still-measuring': 'Tu video todavía se está midiendo. Ahora se envía el primer resultado.',
  'send.failed': 'Sin enviar',
  'send.kept': '{sentence} Tu sesión sigue guardada como está.',
  'send.sent-at': 'Enviado a las {time}, con la aplicación que has elegido.',
  'send.saved-at': 'Guardado como archivo a las {time}.',
  'send.downloads': 'Está entre tus descargas. Envía ese archivo a tu terapeuta, según lo acordado.',
  'send.protection': 'Cómo está protegido',
  'send.sealed':
    'Es un solo archivo cerrado, cuyo nombre acaba en .age. {count, plural, one {Las palabras de la clave de tu terapeuta son {words}.} other {Se abre con cada una de estas claves, la de tu terapeuta y las de sus colegas; sus palabras son {words}.}} Son las mismas que en la hoja que te dieron.',
  'send.signed': 'Lo firma este dispositivo, cuyas palabras son {words}. Tu terapeuta también las ve.',
  'send.session-of': 'Tu sesión del {moment}.',
  'send.answer-of': 'Tu respuesta del {moment}.',
  'send.how-much': '¿Cuánto del video?',
  'send.wish': 'A tu terapeuta le gustaría: {part}. Tú decides.',
  'send.part.none': 'Sin video',
  'send.part.none.hint': 'Tu terapeuta no te ve.',
  'send.part.out-of-line': 'Solo las repeticiones desviadas',
  'send.part.out-of-line.hint':
    'Se ven {count} de {of, plural, one {# repetición} other {# repeticiones}}; el resto está en negro.',
  'send.part.without-head': 'El video sin tu cabeza',
  'send.part.without-head.hint':
    'En negro desde arriba hasta tus hombros. Otras personas, y los espejos, siguen en la imagen.',
  'send.part.whole': 'El video entero',
  'send.part.whole.hint': 'Tu terapeuta te ve a ti y la habitación.',
  'send.part.size': '{part}, {size}',
  'send.about': 'unos {size}',
  'send.ready':
    'Está listo en este dispositivo, y todavía no ha salido nada de él. Míralo antes de enviarlo.',
  'send.preparing': 'Preparando el video',
  'send.preparing-share': 'El video se prepara en tu dispositivo … {share}',
  'send.stop': 'Dejar de preparar',
  'send.video': 'Lo que se envía del video {number}',
  'send.nobody-out': 'Esta vez no se desvió ninguna repetición.',
  'send.no-video': 'No se guardó ningún video de esta sesión.',
  'send.changed': 'Los resultados han cambiado desde entonces: vuelve a elegir qué envías.',
  'send.not-shown': 'Esta parte del video no se ha enviado.',
  'send.cannot-write':
    'Este navegador no sabe escribir un video. Envía el video entero o nada, o abre esta página con otro navegador.',
};
