/** Checks of a plan that need more than one word. */
package lastinch.cases.plan.check;
