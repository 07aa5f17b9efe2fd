/** How easily a step is left out: the features that it shows, and the step before which it must be seen to. */
export interface Rating {
  id: string;
  features: string[];
  /** The step that hides it, where one does. */
  hiddenBy?: string;
}
