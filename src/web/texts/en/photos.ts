export const photosTexts = {
  photos: {
    take: 'Take a photo',
    another: 'Take another photo',
    without: 'Remove the photo',
    preview: 'The photo that will be kept',
    kept: 'Photo of the thing; opens it in full',
    unreadable: 'This device cannot read that picture. Take the photo again, as a JPEG or PNG.',
  },
};
