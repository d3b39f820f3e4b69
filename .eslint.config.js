import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig([
  globalIgnores(['**/.*.cjs', 'dist', 'dist-tools', 'node_modules', 'test-results']),
  js.configs.recommended,
  tseslint.configs.recommended,
  reactHooks.configs.flat.recommended,
  {
    rules: {
      // Typed arrays are indexed within their length all over; `noUncheckedIndexedAccess` stays on elsewhere.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // What is left out of an object stands beside its rest.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  { files: ['src/tools/commands/**'], rules: { 'no-console': 'off' } },
]);
