import { DefaultNamingStrategy, type NamingStrategyInterface } from 'typeorm';

/** `useByPrecision` in code is `use_by_precision` in the database. */
export function snakeCase(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

export class SnakeCaseNaming extends DefaultNamingStrategy implements NamingStrategyInterface {
  override columnName(propertyName: string, customName: string | undefined): string {
    return customName ?? snakeCase(propertyName);
  }
}
