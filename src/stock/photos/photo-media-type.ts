export const photoMediaTypes = ['image/jpeg', 'image/png'] as const;
export type PhotoMediaType = (typeof photoMediaTypes)[number];
