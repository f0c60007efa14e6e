/** What is chosen for this device, whoever uses it: nothing in it is about a person. */
export interface DeviceSettings {
  /** The camera by the name the system gives it; empty for the one at the back. */
  camera: string;
  /** Whether the camera was stopped by hand; else it starts by itself where it may. */
  cameraStopped: boolean;
  /** Whether verdicts sound. */
  sound: boolean;
  /** What the hand-held scanner types in place of a separator; empty for none. */
  separatorSubstitute: string;
}

const place = 'lotward-device';

const untouched: DeviceSettings = { camera: '', cameraStopped: false, sound: false, separatorSubstitute: '' };

/** Signing out clears what the browser keeps; as long as the page is open the device keeps its settings here. */
let current: DeviceSettings | undefined;

export function deviceSettings(): DeviceSettings {
  current ??= { ...untouched, ...kept() };
  return current;
}

export function changeDeviceSettings(change: Partial<DeviceSettings>): void {
  current = { ...deviceSettings(), ...change };
  try {
    localStorage.setItem(place, JSON.stringify(current));
  } catch {
    // A browser that keeps nothing, or is full, still has them as long as the page is open.
  }
}

/** Only what has the type it should have. */
function kept(): Partial<DeviceSettings> {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(place) ?? '{}');
    const usual: Record<string, unknown> = { ...untouched };
    return Object.fromEntries(
      Object.entries(Object(found)).filter(([name, value]) => typeof value === typeof usual[name]),
    );
  } catch {
    return {};
  }
}
