/** Why a pour ended as it did: heat accounts, and the causes that fit what was found. */
package lastinch.solver.diagnosis;
