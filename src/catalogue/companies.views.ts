/** A maker or a supplier. */
export class CompanyView {
  id: string;
  name: string;
  version: number;
}
