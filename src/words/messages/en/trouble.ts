/** What can go wrong at home: what, why, and what to do. */
export const trouble = {
  'app.not-loaded': 'This part of Overfoot could not be loaded',
  'app.not-loaded.what': 'Check the connection, then reload the page. Nothing kept on this device is lost.',
  'app.reload': 'Reload the page',
  'app.slow': 'Opening takes longer than usual',
  'app.slow.what':
    'Another tab of Overfoot may be busy. Wait for it, or close it and reload this page. Nothing kept on this device is lost.',
  'app.opening': 'Opening …',
  'app.stopped': 'This screen stopped working',
  'app.stopped.what':
    'Nothing that is kept on this device was lost. Go back to the start, or reload the page. If it happens again, save a backup, and send the text below to whoever looks after this page for you.',
  'app.to-start': 'Go to the start',
  'app.save-recording': 'Save the open recording as a file',
  'app.unforeseen': 'Something went wrong that was not foreseen',
  'app.unforeseen.what':
    'What is kept on this device stays. If something on this page no longer answers, reload it.',
  'app.details': 'Technical details',
  'app.details.label': 'Technical details, without health data',

  'trouble.recording': 'This recording can’t be opened',
  'trouble.session': 'This session can’t be opened',
  'trouble.plan': 'This plan can’t be opened',
  'trouble.file': 'This file can’t be opened',
  'trouble.video': 'This video can’t be used',
  'trouble.storage': 'This device could not save or find it',
  'trouble.open': 'This could not be opened',
  'trouble.save': 'This could not be saved',
  'trouble.keep': 'This could not be kept',
  'trouble.record': 'This could not be recorded',
  'trouble.track': 'This could not be tracked',
  'trouble.follow': 'This could not be followed',
  'trouble.measure': 'This could not be measured again',
  'trouble.prepare': 'This could not be prepared',
  'trouble.read': 'This could not be read',
  'trouble.seal': 'This could not be sealed',
  'trouble.do': 'This could not be done',
  'trouble.attach': 'This could not be attached',
  'trouble.restore': 'This could not be restored',
  'trouble.delete': 'This could not be deleted',
  'trouble.list': 'This could not be listed',
  'trouble.look-closer': 'This could not be looked at more closely',
  'trouble.reason': 'The reason reported is: {reason}. Try again; if it happens again, reload the page.',
  'trouble.no-reason': 'no reason was given',
  'trouble.cannot-start': 'You cannot start yet',
  'trouble.not-all-saved': 'Not everything can be saved',
  'trouble.tab-memory': 'What you record will be lost when this tab is closed',
  'trouble.tab-videos': 'Videos will be lost when this tab is closed',
  'trouble.memory':
    '{problem} You can continue: what you record stays until this tab is closed. Before that, each set can be saved as a file.',
  'trouble.no-videos': '{problem} You can continue: joints, results and answers are kept.',
  'trouble.set-too-long':
    'This set has gone on for {minutes} minutes, which is as long as a set can be. It is kept up to here; end it, and begin another one.',
  'trouble.nothing-saved':
    'This set was interrupted before anything could be saved. Delete it, and do the set again if you can.',
  'trouble.no-video-left':
    'Its video is no longer on this device. The joints that were found while you moved stay.',
  'trouble.video-short': 'Its video ends too soon. The joints that were found while you moved stay.',
  'trouble.awake':
    'The screen may switch itself off while you exercise, and the recording would pause. Set a longer time until the screen switches off in the settings of this device, and switch power saving off.',
  'trouble.slow':
    'This device can’t count along just now. Count for yourself: your exercise is recorded, and measured afterwards. Closing other apps and plugging the device in may help.',

  'camera-trouble.way-out': 'Or record with the device’s own camera app and open the file here.',
  'camera-trouble.refused':
    'The camera was not allowed. Allow it for this page in the browser (the icon next to the address), and on a phone in the system’s settings for the browser, then try again.',
  'camera-trouble.none': 'No camera was found. Plug one in or switch it on, then try again.',
  'camera-trouble.in-use':
    'The camera is in use or does not answer. Close other programs and pages that use it, end a call, then try again.',
  'camera-trouble.insecure-page':
    'Browsers give the camera to secure pages only. Open this page with an address that starts with https:, then try again.',
  'camera-trouble.unplugged':
    'The camera has stopped: it was unplugged, taken by a call or another program, or no longer allowed. What was recorded up to here is kept. Give the camera back, then try again.',
  'camera-trouble.impossible-wish': 'The chosen camera is not there any more. Choose another one.',
  'camera-trouble.unknown': 'The camera could not be started. Try again, or restart the browser.',
  'recording-trouble.no-recorder':
    'This browser can’t record video. Update it or use another one. Or record with the device’s own camera app and open the file here.',
  'recording-trouble.camera-ended':
    'The camera stopped giving pictures, so the recording ended. What was recorded until then is kept. Check the camera, then start the set again.',
  'recording-trouble.recorder-failed':
    'The browser’s recorder stopped. What was recorded until then is kept. Start the set again; if the recorder stops again, reload the page.',
  'recording-trouble.not-kept':
    'The recording ended because the video could not be kept. What was kept until then stays.',

  'video-trouble.empty': '"{file}" is empty (0 bytes). Copy it from the camera again, then open it.',
  'video-trouble.not-video':
    '"{file}" is not a video that can be read. Choose a video file: MP4, MOV, WebM or MKV.',
  'video-trouble.sound-only': '"{file}" holds sound only, no picture. Choose the video itself.',
  'video-trouble.format':
    'This browser can’t show the video’s format ({codec}). Export or convert it to MP4 with H.264 video (phones: camera settings, "most compatible"), then open that file.',
  'video-trouble.picture':
    '"{file}" has pictures of {width} by {height} px, of which nobody can be measured. Film one set as a video of its own, or cut it out, then open that.',
  'video-trouble.frames':
    '"{file}" has more than {frames} frames, which is more than can be measured at once. Film one set as a video of its own, or cut it out, then open that.',
  'video-trouble.length':
    '"{file}" lasts longer than {minutes} minutes, which is longer than can be measured at once. Film one set as a video of its own, or cut it out, then open that.',
  'video-trouble.gaps':
    '"{file}" has frames more than {seconds} s apart, so that the movement between them is unknown. Film one set as a video of its own, or cut it out, then open that.',
  'video-trouble.cut-off':
    '"{file}" is cut off or damaged: its frames can’t be read. Copy it from the camera again, then open it.',
  'video-trouble.decode':
    '"{file}" can’t be decoded ({reason}). Copy it from the camera again, then open it.',
  'video-trouble.shortfall':
    'The video is cut off or damaged: {read} of {expected} frames could be read, and only these are measured. Copy it from the camera again for the rest.',

  'storage-trouble.refused':
    'The browser refuses to keep anything for this page. Allow site data for it in the browser’s settings, then reload.',
  'storage-trouble.private-window':
    'The browser keeps nothing here, as private windows do. Open this page in an ordinary window to keep recordings.',
  'storage-trouble.unsupported':
    'This browser can’t keep recordings on the device. Update it, or open this page in another browser, over https.',
  'storage-trouble.full':
    'This device’s storage is full. Delete old recordings or other files, then try again.',
  'storage-trouble.newer':
    'What is kept here was written by a newer version of this program. Reload the page to get it.',
  'storage-trouble.silent':
    'The device’s storage does not answer. Close all other tabs of this program, then reload this one; what is kept stays.',
  'storage-trouble.other-tab':
    'Another tab of this program is in the way. Close all its other tabs, then reload this one.',
  'storage-trouble.missing':
    'This is no longer kept on this device. It may have been deleted in another tab, or with the browser’s site data; reload the page.',
  'storage-trouble.changed':
    'Another tab has changed this since it was opened here, and nothing was overwritten. Copy what you wrote here, then open it again.',
  'storage-trouble.damaged':
    'What is kept of this on the device can’t be read. Restore it from a saved file, or delete it.',
  'storage-trouble.locked':
    'What is kept here is locked by a passphrase. Reload the page to be asked for it.',
  'storage-trouble.failed':
    'The device’s storage failed ({reason}). Reload the page; if it happens again, free some space.',

  'plan-trouble.not-one': 'This is not a plan. Choose the plan file that you were given.',
  'plan-trouble.not-json': 'This is not a plan: it is not JSON. Choose the plan file that you were given.',
  'plan-trouble.too-much': 'This plan holds more than one can. Ask your therapist for a corrected one.',
  'plan-trouble.newer':
    'This plan is of version {version}; this program reads up to {known}. Update the program.',
  'plan-trouble.senseless': 'This plan makes no sense: {fault}. Ask your therapist for a corrected one.',
  'plan-trouble.damaged': 'This plan is damaged at {place}. Ask your therapist for a corrected one.',
  'plan-trouble.too-large': 'This file is too large for a plan. Choose the plan file that you were given.',
  'plan-trouble.link-too-long': 'This link is too long for a plan. Ask for the link or the plan file again.',
  'plan-trouble.link-empty': 'This link contains no plan. Ask for the link or the plan file again.',
  'plan-trouble.link-newer':
    'This link is of version {version}; this program reads up to {known}. Update the program.',
  'plan-trouble.link-broken':
    'This link is not whole: part of it was lost or changed on the way. Ask for the link or the plan file again.',
  'plan-trouble.link-large':
    'What this link carries is too large for a plan. Ask for the link or the plan file again.',
  'plan-trouble.link-packed':
    'What this link carries can’t be unpacked. Ask for the link or the plan file again.',
  'plan-trouble.broken': 'Its seal is broken: a part of it was changed or lost. Use another copy of it.',
  'plan-trouble.passphrase':
    'The passphrase does not open this file. Capital letters, spaces and the order of the words count.',
} as const;
