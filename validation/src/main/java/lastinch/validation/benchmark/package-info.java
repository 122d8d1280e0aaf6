/** Speed of the parts that run most often. Run by hand, never by the build machine. */
package lastinch.validation.benchmark;
