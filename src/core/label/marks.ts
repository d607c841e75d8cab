/** Signs beside a name that point to a legend, as letters of a class of an expression. */
export const footnoteMarks = '*†‡°◊¹²³⁴⁵';

/** The same as a number or a letter in brackets, as an expression. */
export const inBrackets = '\\([\\da-d]\\)';
