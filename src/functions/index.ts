/** Entry of the custom functions. The build adds the registration of every function in this folder. */
export {};
