import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig([
  globalIgnores(['.cache', '**/.*.cjs', 'dist', 'dist-tools', 'node_modules', 'test-results']),
  js.configs.recommended,
  tseslint.configs.recommended,
  reactHooks.configs.flat.recommended,
  {
    rules: {
      // Under `noUncheckedIndexedAccess` each element may be undefined; `!` says that the index is within the length.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // A property is left out of an object by naming it next to the rest.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  { files: ['src/tools/commands/**'], rules: { 'no-console': 'off' } },
]);
