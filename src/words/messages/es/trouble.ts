import type { trouble as english } from '../en/trouble';
import type { Translated } from '../translated';

export const trouble: Translated<typeof english> = {
  'app.not-loaded': 'Esta parte de Overfoot no se pudo cargar',
  'app.not-loaded.what':
    'Comprueba la conexión y carga de nuevo la página. No se pierde nada de lo guardado en este dispositivo.',
  'app.reload': 'Cargar de nuevo la página',
  'app.slow': 'Abrir tarda más de lo normal',
  'app.slow.what':
    'Puede que otra pestaña de Overfoot esté ocupada. Espera, o ciérrala y carga de nuevo esta página. No se pierde nada de lo guardado en este dispositivo.',
  'app.opening': 'Abriendo …',
  'app.stopped': 'Esta pantalla ha dejado de funcionar',
  'app.stopped.what':
    'No se ha perdido nada de lo guardado en este dispositivo. Vuelve al inicio, o carga de nuevo la página. Si vuelve a pasar, guarda una copia de seguridad y envía el texto de abajo a quien cuide de esta página.',
  'app.to-start': 'Ir al inicio',
  'app.save-recording': 'Guardar la grabación abierta como archivo',
  'app.unforeseen': 'Ha pasado algo que no estaba previsto',
  'app.unforeseen.what':
    'Lo guardado en este dispositivo se queda. Si algo de esta página ya no responde, cárgala de nuevo.',
  'app.details': 'Detalles técnicos',
  'app.details.label': 'Detalles técnicos, sin datos de salud',

  'trouble.recording': 'Esta grabación no se puede abrir',
  'trouble.session': 'Esta sesión no se puede abrir',
  'trouble.plan': 'Este plan no se puede abrir',
  'trouble.file': 'Este archivo no se puede abrir',
  'trouble.video': 'Este video no se puede usar',
  'trouble.storage': 'Este dispositivo no pudo guardarlo o encontrarlo',
  'trouble.open': 'Esto no se pudo abrir',
  'trouble.save': 'Esto no se pudo guardar',
  'trouble.keep': 'Esto no se pudo conservar',
  'trouble.record': 'Esto no se pudo grabar',
  'trouble.track': 'Esto no se pudo seguir',
  'trouble.follow': 'Esto no se pudo seguir',
  'trouble.measure': 'Esto no se pudo volver a medir',
  'trouble.prepare': 'Esto no se pudo preparar',
  'trouble.read': 'Esto no se pudo leer',
  'trouble.seal': 'Esto no se pudo cerrar para enviarlo',
  'trouble.do': 'Esto no se pudo hacer',
  'trouble.attach': 'Esto no se pudo adjuntar',
  'trouble.restore': 'Esto no se pudo recuperar',
  'trouble.delete': 'Esto no se pudo borrar',
  'trouble.list': 'Esto no se pudo listar',
  'trouble.look-closer': 'Esto no se pudo mirar más de cerca',
  'trouble.reason':
    'El motivo que se indica es: {reason}. Inténtalo otra vez; si vuelve a pasar, carga de nuevo la página.',
  'trouble.no-reason': 'no se indicó ningún motivo',
  'trouble.cannot-start': 'Todavía no puedes empezar',
  'trouble.not-all-saved': 'No se puede guardar todo',
  'trouble.tab-memory': 'Lo que grabes se perderá al cerrar esta pestaña',
  'trouble.tab-videos': 'Los videos se perderán al cerrar esta pestaña',
  'trouble.memory':
    '{problem} Puedes seguir: lo que grabes se queda hasta que cierres esta pestaña, y antes puedes guardar cada serie como archivo.',
  'trouble.no-videos':
    '{problem} Puedes seguir: las articulaciones, los resultados y las respuestas se guardan.',
  'trouble.set-too-long':
    'Esta serie dura ya {minutes} minutos, que es lo máximo. Se guarda hasta aquí; termínala y empieza otra.',
  'trouble.nothing-saved':
    'Esta serie se interrumpió antes de que se guardara algo. Bórrala, y vuelve a hacer la serie si puedes.',
  'trouble.no-video-left':
    'Su video ya no está en este dispositivo, así que quedan las articulaciones seguidas al grabar.',
  'trouble.video-short':
    'Su video acaba antes que la grabación, así que quedan las articulaciones seguidas al grabar.',
  'trouble.awake':
    'La pantalla puede apagarse mientras haces ejercicio, y la grabación se pararía. En los ajustes de este dispositivo, pon un tiempo más largo hasta que se apague la pantalla, y quita el ahorro de energía.',
  'trouble.slow':
    'Este dispositivo no puede contar contigo ahora mismo. Cuenta tú: tu ejercicio se graba y se mide después. Puede ayudar cerrar otras aplicaciones y enchufar el dispositivo.',

  'camera-trouble.way-out': 'O graba con la aplicación de cámara del dispositivo y abre aquí el archivo.',
  'camera-trouble.refused':
    'No se dio permiso para la cámara. Dáselo a esta página en el navegador (el icono junto a la dirección) y, en un teléfono, también en los ajustes del sistema para el navegador; después inténtalo otra vez.',
  'camera-trouble.none': 'No se encontró ninguna cámara. Conecta una o enciéndela, e inténtalo otra vez.',
  'camera-trouble.in-use':
    'La cámara está en uso o no responde. Cierra otros programas y páginas que la usen, cuelga si hay una llamada, e inténtalo otra vez.',
  'camera-trouble.insecure-page':
    'Los navegadores solo dan la cámara a páginas seguras. Abre esta página con una dirección que empiece por https:, e inténtalo otra vez.',
  'camera-trouble.unplugged':
    'La cámara se ha parado: se desconectó, la tomó una llamada u otro programa, o ya no tiene permiso. Lo grabado hasta aquí está guardado. Devuelve la cámara, e inténtalo otra vez.',
  'camera-trouble.impossible-wish': 'La cámara elegida ya no está. Elige otra.',
  'camera-trouble.unknown':
    'No se pudo poner en marcha la cámara. Inténtalo otra vez, o reinicia el navegador.',
  'recording-trouble.no-recorder':
    'Este navegador no puede grabar video. Actualízalo o usa otro, o graba con la aplicación de cámara del dispositivo y abre aquí el archivo.',
  'recording-trouble.camera-ended':
    'La cámara dejó de dar imagen, así que la grabación acabó. Lo grabado hasta entonces está guardado. Revisa la cámara y vuelve a empezar la serie.',
  'recording-trouble.recorder-failed':
    'La grabadora del navegador se paró. Lo grabado hasta entonces está guardado. Vuelve a empezar la serie; si se para otra vez, carga de nuevo la página.',
  'recording-trouble.not-kept':
    'La grabación acabó porque no se pudo guardar el video. Lo guardado hasta entonces se queda.',

  'video-trouble.empty': '«{file}» está vacío (0 bytes). Cópialo otra vez desde la cámara y ábrelo después.',
  'video-trouble.not-video':
    '«{file}» no es un video que se pueda leer. Elige un archivo de video: MP4, MOV, WebM o MKV.',
  'video-trouble.sound-only': '«{file}» solo tiene sonido, no imagen. Elige el video mismo.',
  'video-trouble.format':
    'Este navegador no puede mostrar el formato del video ({codec}). Expórtalo o conviértelo a MP4 con video H.264 (en teléfonos: ajustes de la cámara, «más compatible»), y abre ese archivo.',
  'video-trouble.picture':
    '«{file}» tiene imágenes de {width} por {height} px, en las que no se puede medir a nadie. Graba una sola serie en un video aparte, o recórtala, y abre ese.',
  'video-trouble.frames':
    '«{file}» tiene más de {frames} imágenes, más de las que se pueden medir de una vez. Graba una sola serie en un video aparte, o recórtala, y abre ese.',
  'video-trouble.length':
    '«{file}» dura más de {minutes} minutos, más de lo que se puede medir de una vez. Graba una sola serie en un video aparte, o recórtala, y abre ese.',
  'video-trouble.gaps':
    '«{file}» tiene imágenes separadas por más de {seconds} s, y no se sabe qué movimiento hubo entre ellas. Graba una sola serie en un video aparte, o recórtala, y abre ese.',
  'video-trouble.cut-off':
    '«{file}» está cortado o dañado: sus imágenes no se pueden leer. Cópialo otra vez desde la cámara y ábrelo después.',
  'video-trouble.decode':
    '«{file}» no se puede descodificar ({reason}). Cópialo otra vez desde la cámara y ábrelo después.',
  'video-trouble.shortfall':
    'El video está cortado o dañado: se pudieron leer {read} de {expected} imágenes, y solo se miden esas. Para el resto, cópialo otra vez desde la cámara.',

  'storage-trouble.refused':
    'El navegador no quiere guardar nada de esta página. Permite los datos de este sitio en los ajustes del navegador y carga de nuevo la página.',
  'storage-trouble.private-window':
    'El navegador no guarda nada aquí, como hacen las ventanas privadas. Abre esta página en una ventana normal para conservar las grabaciones.',
  'storage-trouble.unsupported':
    'Este navegador no puede guardar nada en el dispositivo. Ponlo al día, o abre esta página con otro navegador, con https.',
  'storage-trouble.full':
    'El espacio de este dispositivo está lleno. Borra grabaciones antiguas u otros archivos, e inténtalo otra vez.',
  'storage-trouble.newer':
    'Lo que se guarda aquí lo escribió una versión más nueva de este programa. Carga de nuevo la página para tenerla.',
  'storage-trouble.silent':
    'El almacén de este dispositivo no responde. Cierra las demás pestañas de este programa y carga de nuevo esta; lo guardado se queda.',
  'storage-trouble.other-tab':
    'Otra pestaña de este programa está en medio. Cierra todas las demás y carga de nuevo esta.',
  'storage-trouble.missing':
    'Esto ya no está guardado en este dispositivo. Puede que se borrara en otra pestaña, o con los datos del navegador; carga de nuevo la página.',
  'storage-trouble.changed':
    'Otra pestaña ha cambiado esto desde que se abrió aquí, y no se ha sobrescrito nada. Copia lo que has escrito aquí y ábrelo otra vez.',
  'storage-trouble.damaged':
    'Lo que hay guardado de esto no se puede leer. Recupéralo de un archivo guardado, o bórralo.',
  'storage-trouble.locked':
    'Lo que se guarda aquí está bloqueado con una contraseña. Carga de nuevo la página para que te la pida.',
  'storage-trouble.failed':
    'El almacén del dispositivo falló ({reason}). Carga de nuevo la página; si vuelve a pasar, libera algo de espacio.',

  'plan-trouble.not-one': 'Esto no es un plan. Elige el archivo del plan que te dieron.',
  'plan-trouble.not-json': 'Esto no es un plan: no es JSON. Elige el archivo del plan que te dieron.',
  'plan-trouble.too-much':
    'Este plan contiene más de lo que puede contener. Pide a tu terapeuta uno corregido.',
  'plan-trouble.newer':
    'Este plan es de la versión {version}; este programa lee hasta la {known}. Actualiza el programa.',
  'plan-trouble.senseless':
    'Este plan no tiene sentido. Pide a tu terapeuta uno corregido. Lo que falla, en inglés para tu terapeuta: {fault}.',
  'plan-trouble.damaged': 'Este plan está dañado en {place}. Pide a tu terapeuta uno corregido.',
  'plan-trouble.too-large':
    'Este archivo es demasiado grande para un plan. Elige el archivo del plan que te dieron.',
  'plan-trouble.link-too-long':
    'Este enlace es demasiado largo para un plan. Pide otra vez el enlace o el archivo del plan.',
  'plan-trouble.link-empty':
    'Este enlace no contiene ningún plan. Pide otra vez el enlace o el archivo del plan.',
  'plan-trouble.link-newer':
    'Este enlace es de la versión {version}; este programa lee hasta la {known}. Actualiza el programa.',
  'plan-trouble.link-broken':
    'Este enlace no está completo: una parte se perdió o cambió por el camino. Pide otra vez el enlace o el archivo del plan.',
  'plan-trouble.link-large':
    'Lo que lleva este enlace es demasiado grande para un plan. Pide otra vez el enlace o el archivo del plan.',
  'plan-trouble.link-packed':
    'Lo que lleva este enlace no se puede desempaquetar. Pide otra vez el enlace o el archivo del plan.',
  'plan-trouble.broken': 'Su cierre está roto: una parte se cambió o se perdió. Usa otra copia.',
  'plan-trouble.passphrase':
    'La contraseña no abre este archivo. Cuentan las mayúsculas, los espacios y el orden de las palabras.',
};
