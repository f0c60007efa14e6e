import { parseXml, type XmlElement, XmlError, type XmlNode, XmlText } from '@rgrove/parse-xml';
import type { FileFaultView } from './file-faults.views.js';

/** So many marks (`<`) may an XML text have: what is made of each takes memory. */
export const maximumXmlMarks = 400_000;
/** So deep may elements stand in each other. */
export const maximumXmlDepth = 32;

/** An element as far as files of facts need it. */
export interface XmlFileElement {
  /** Without the prefix of its namespace. */
  name: string;
  /** By their names without prefixes. */
  attributes: Map<string, string>;
  elements: XmlFileElement[];
  /** All text within, without spaces around it. */
  text: string;
}

export type XmlFile = { root: XmlFileElement; faults: [] } | { root: null; faults: [FileFaultView] };

/**
 * Reads an XML 1.0 text. Guarantees: nothing outside the text is looked up, and no entity but the five of XML itself and
 * numbered characters is put in – one that a document type declares is a fault where it is used, so a small text stays
 * small; a text with more marks, or deeper, than is allowed is refused.
 */
export function readXmlFile(text: string): XmlFile {
  const whole = (message: string, row: number | null = null): XmlFile => ({
    root: null,
    faults: [{ row, column: null, message }],
  });
  const xml = text.replace(/^\uFEFF/, '').trimStart();
  if (xml === '') return whole('The file is empty. It needs an XML text.');
  if (hasMoreMarks(xml, maximumXmlMarks)) {
    return whole(`The file has more than ${maximumXmlMarks} marks of XML; so large a file is not taken in.`);
  }
  try {
    const { root } = parseXml(xml);
    if (root === null) return whole('The file has no element. Export it anew.');
    const read = elementOf(root, 1);
    return read === null ? whole(tooDeep) : { root: read, faults: [] };
  } catch (error) {
    // The parser goes down into elements by calling itself; nobody's report is as deep as that.
    if (error instanceof RangeError) return whole(tooDeep);
    if (!(error instanceof XmlError)) throw error;
    const [said = ''] = error.message.split(' (line ', 1);
    return whole(
      `From line ${error.line}, character ${error.column} on, the file cannot be read as XML: ${said.slice(0, 200)}. Export it anew.`,
      error.line,
    );
  }
}

const tooDeep = `Elements of the file stand more than ${maximumXmlDepth} deep in each other; no report does. Look at what made it.`;

/** Null when it is too deep. */
function elementOf(element: XmlElement, depth: number): XmlFileElement | null {
  if (depth > maximumXmlDepth) return null;
  const elements: XmlFileElement[] = [];
  for (const child of element.children) {
    if (!isElement(child)) continue;
    const read = elementOf(child, depth + 1);
    if (read === null) return null;
    elements.push(read);
  }
  const attributes = Object.entries(element.attributes).map(
    ([name, value]) => [localName(name), value.trim()] as const,
  );
  return {
    name: localName(element.name),
    attributes: new Map(attributes),
    elements,
    // Only where it is asked for: that of the root is nearly the whole file.
    get text() {
      return textWithin(element).trim();
    },
  };
}

/** What stands in neighbouring elements stays apart. */
function textWithin(element: XmlElement): string {
  const parts: string[] = [];
  for (const child of element.children) {
    if (isElement(child)) parts.push(` ${textWithin(child)} `);
    else if (child instanceof XmlText) parts.push(child.text);
  }
  return parts.join('');
}

function isElement(node: XmlNode): node is XmlElement {
  return node.type === 'element';
}

function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

function hasMoreMarks(xml: string, most: number): boolean {
  let count = 0;
  for (let at = xml.indexOf('<'); at !== -1; at = xml.indexOf('<', at + 1)) {
    count += 1;
    if (count > most) return true;
  }
  return false;
}
