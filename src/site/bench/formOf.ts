import type { Schema } from "../../input/introspect.ts";
import { outlineOf } from "../../input/outline.ts";
import type { FieldPath } from "../../input/problem.ts";
import { formFrom, type FormModel } from "./form.ts";

/** What a form for a group of keys asks, from its schema. */
export const formOf = (schema: Schema, path: FieldPath = []): FormModel => formFrom(outlineOf(schema), path);
