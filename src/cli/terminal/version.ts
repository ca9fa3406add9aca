declare const WHEAL_VERSION: string;

/** The version that the bundle was built from. */
export const version = typeof WHEAL_VERSION === 'string' ? WHEAL_VERSION : '0.0.0-development';
