/** Work factor for passphrases in tests, log2 of scrypt's N: at age's default (18) each try takes a second. */
export const quickScrypt = 2;
