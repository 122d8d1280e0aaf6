/** From the words of a plan to the job it describes. */
package lastinch.cases.plan.assembly;
