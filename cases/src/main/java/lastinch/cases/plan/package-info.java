/** A case file read to the end: the plan a person described, and what had to be assumed for it. */
package lastinch.cases.plan;
